package fairpull.io.picture;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PictureFile;
import fairpull.io.folder.Sha256;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads a PNG or JPEG. How large a picture is says its head, and one that is too large is refused before any of it is unpacked; metadata
 * are not looked at. Where it lets through what is behind it, that is white.
 */
public final class PictureReader {
    /** Larger files hold more than a chart. */
    static final int MOST_BYTES = 32 << 20;
    private static final Set<String> FORMATS = Set.of("png", "jpeg");
    private static final String REMEDY = "give a PNG or JPEG, such as a screen shot of the chart";

    private PictureReader() {
    }

    /**
     * A picture and where it is from.
     *
     * @param file its name and hash
     * @param picture its pixels
     * @param lossy whether it is a JPEG, in which the colours of thin lines run into each other
     */
    public record Loaded(PictureFile file, Picture picture, boolean lossy) {
    }

    /**
     * Reads a file.
     *
     * @throws InputException if it is no picture, or one too large
     */
    public static Loaded read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new InputException(Place.of(name), "no such file", REMEDY);
        }
        if (Files.size(file) > MOST_BYTES) {
            throw tooManyBytes(name);
        }
        return read(Files.readAllBytes(file), name);
    }

    /**
     * Reads the bytes of a file.
     *
     * @throws InputException if they are no picture, or one too large
     */
    public static Loaded read(byte[] bytes, String name) {
        if (bytes.length > MOST_BYTES) {
            throw tooManyBytes(name);
        }
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new InputException(Place.of(name), "not a picture that can be read", REMEDY);
            }
            ImageReader reader = readers.next();
            try {
                String format = reader.getFormatName().toLowerCase(Locale.ROOT);
                if (!FORMATS.contains(format)) {
                    throw new InputException(Place.of(name), "a picture of the kind " + format.toUpperCase(Locale.ROOT), REMEDY);
                }
                reader.setInput(in, true, true);
                Picture picture = unpack(reader, name);
                return new Loaded(new PictureFile(name, Sha256.of(bytes), picture.width(), picture.height()), picture,
                        format.equals("jpeg"));
            } finally {
                reader.dispose();
            }
        } catch (InputException refused) {
            throw refused;
        } catch (IOException | RuntimeException broken) {
            // the readers of the platform answer broken files with exceptions of many kinds
            throw new InputException(Place.of(name), "the picture is broken", "save or fetch it again");
        }
    }

    private static Picture unpack(ImageReader reader, String name) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > Picture.MOST_PIXELS) {
            throw new InputException(Place.of(name), "a picture of " + width + " × " + height + " pixels is too large to be traced",
                    "make it smaller than " + Picture.MOST_PIXELS / 1_000_000 + " million pixels, or cut out the chart");
        }
        BufferedImage image = reader.read(0);
        BufferedImage flat = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = flat.createGraphics();
        g.drawImage(image, 0, 0, Color.WHITE, null);
        g.dispose();
        return Picture.of(width, height, flat.getRGB(0, 0, width, height, null, 0, width));
    }

    private static InputException tooManyBytes(String name) {
        return new InputException(Place.of(name), "larger than " + (MOST_BYTES >> 20) + " MiB", "cut out the chart and save it alone");
    }
}
