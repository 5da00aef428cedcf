package fairpull.io.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.domain.InputException;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureReaderTest {
    @TempDir
    private Path folder;

    private static byte[] picture(String format, int type) throws IOException {
        BufferedImage image = new BufferedImage(40, 30, type);
        image.setRGB(7, 3, new Color(200, 30, 40).getRGB());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, format, bytes)).isTrue();
        return bytes.toByteArray();
    }

    private static InputException refused(byte[] bytes) {
        try {
            PictureReader.read(bytes, "chart.png");
        } catch (InputException refused) {
            assertThat(refused.oneLine()).startsWith("chart.png: ").doesNotContain("Exception", "\n");
            return refused;
        }
        throw new AssertionError("was read");
    }

    @Test
    void pixelsAndHashAreThoseOfTheFile() throws Exception {
        byte[] bytes = picture("png", BufferedImage.TYPE_INT_RGB);
        Path file = Files.write(folder.resolve("chart.png"), bytes);
        PictureReader.Loaded loaded = PictureReader.read(file);
        assertThat(loaded.picture().rgb(7, 3)).isEqualTo(0xC81E28);
        assertThat(loaded.file().widthPx()).isEqualTo(40);
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
        assertThat(loaded.file().sha256()).isEqualTo(HexFormat.of().formatHex(hash));
        assertThat(loaded.lossy()).isFalse();
        assertThat(PictureReader.read(picture("jpeg", BufferedImage.TYPE_INT_RGB), "a.jpg").lossy()).isTrue();
    }

    @Test
    void whatIsTransparentIsWhite() throws Exception {
        assertThat(PictureReader.read(picture("png", BufferedImage.TYPE_INT_ARGB), "a.png").picture().rgb(0, 0)).isEqualTo(0xFFFFFF);
    }

    @Test
    void whatIsNoPictureIsRefusedInOneLine() throws Exception {
        assertThat(refused("<html>no picture</html>".getBytes(StandardCharsets.UTF_8)).oneLine()).contains("not a picture", "PNG or JPEG");
        assertThat(refused(new byte[0]).oneLine()).contains("not a picture");
        assertThat(refused(picture("gif", BufferedImage.TYPE_INT_RGB)).oneLine()).contains("of the kind GIF");
        assertThatThrownBy(() -> PictureReader.read(folder.resolve("none.png"))).isInstanceOf(InputException.class)
                .hasMessageContaining("no such file");
        assertThatThrownBy(() -> PictureReader.read(folder)).isInstanceOf(InputException.class);
    }

    @Test
    void cutOffOrScrambledPicturesAreRefusedOrReadButNeverBreakAnything() throws Exception {
        for (String format : new String[] {"png", "jpeg"}) {
            byte[] whole = picture(format, BufferedImage.TYPE_INT_RGB);
            for (int length = 8; length < whole.length; length += 7) {
                survives(Arrays.copyOf(whole, length));
                byte[] scrambled = whole.clone();
                scrambled[length] ^= 0x55;
                survives(scrambled);
            }
        }
        assertThat(refused(Arrays.copyOf(picture("png", BufferedImage.TYPE_INT_RGB), 50)).oneLine()).contains("broken");
    }

    private static void survives(byte[] bytes) {
        try {
            assertThat(PictureReader.read(bytes, "chart.png").picture().width()).isPositive();
        } catch (InputException refused) {
            assertThat(refused.oneLine()).startsWith("chart.png: ");
        }
    }

    /** A head of 60,000 × 60,000 pixels with nothing behind it: only who does not look at the head first would try to unpack it. */
    @Test
    void aPictureThatWouldFillTheMemoryIsRefusedByItsHead() throws Exception {
        byte[] head = ByteBuffer.allocate(17).put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(60_000).putInt(60_000)
                .put(new byte[] {8, 2, 0, 0, 0}).array();
        CRC32 sum = new CRC32();
        sum.update(head);
        byte[] bomb = ByteBuffer.allocate(8 + 4 + head.length + 4).putLong(0x89504E470D0A1A0AL).putInt(13).put(head)
                .putInt((int) sum.getValue()).array();
        assertThat(refused(bomb).oneLine()).contains("60000 × 60000 pixels is too large", "smaller than 16 million");
    }

    @Test
    void filesThatAreTooLargeAreNotEvenLookedAt() {
        assertThat(refused(new byte[PictureReader.MOST_BYTES + 1]).oneLine()).contains("larger than 32 MiB");
    }
}
