package fairpull.domain.tracing;

import java.util.regex.Pattern;

/**
 * Which picture was traced, so that anybody can see whether they look at the same one.
 *
 * @param name of its file, without folders
 * @param sha256 of the bytes of its file, in lower-case hexadecimal
 * @param widthPx pixels across
 * @param heightPx pixels down
 */
public record PictureFile(String name, String sha256, int widthPx, int heightPx) {
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
    private static final int LONGEST_NAME = 255;

    public PictureFile {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("a picture has a name of up to " + LONGEST_NAME + " characters");
        }
        if (!HASH.matcher(sha256).matches()) {
            throw new IllegalArgumentException("sha256: 64 hexadecimal digits in lower case, was “" + sha256 + "”");
        }
        if (widthPx < 1 || heightPx < 1 || (long) widthPx * heightPx > Picture.MOST_PIXELS) {
            throw new IllegalArgumentException("a picture has 1 … " + Picture.MOST_PIXELS + " pixels, was " + widthPx + " × " + heightPx);
        }
    }
}
