package fairpull.domain.tracing;

/**
 * The pixels of a picture, immutable. Places in it are counted in pixels from its upper left corner, so that the middle of the first
 * pixel lies at (0.5, 0.5); y runs downwards.
 */
public final class Picture {
    /** Larger pictures show no more of a curve and would fill the memory. */
    public static final int MOST_PIXELS = 16_000_000;
    private static final int RGB = 0xFFFFFF;

    private final int width;
    private final int height;
    private final int[] pixels;

    private Picture(int width, int height, int[] pixels) {
        this.width = width;
        this.height = height;
        this.pixels = pixels;
    }

    /**
     * A copy of pixels.
     *
     * @param pixels row by row from the top, each {@code 0xRRGGBB} in sRGB; what stands above those bits is dropped
     * @throws IllegalArgumentException if there are not width × height of them, or too many
     */
    public static Picture of(int width, int height, int[] pixels) {
        if (width < 1 || height < 1 || (long) width * height > MOST_PIXELS || pixels.length != width * height) {
            throw new IllegalArgumentException("a picture of " + width + " × " + height + " pixels cannot have " + pixels.length);
        }
        int[] copy = new int[pixels.length];
        for (int place = 0; place < pixels.length; place++) {
            copy[place] = pixels[place] & RGB;
        }
        return new Picture(width, height, copy);
    }

    /** {@return how many pixels it is wide} */
    public int width() {
        return width;
    }

    /** {@return how many pixels it is high} */
    public int height() {
        return height;
    }

    /** {@return the colour of a pixel as {@code 0xRRGGBB}} */
    public int rgb(int column, int row) {
        return pixels[row * width + column];
    }

    /** {@return whether there is such a pixel} */
    public boolean holds(int column, int row) {
        return column >= 0 && row >= 0 && column < width && row < height;
    }

    @Override
    public String toString() {
        return width + " × " + height + " pixels";
    }
}
