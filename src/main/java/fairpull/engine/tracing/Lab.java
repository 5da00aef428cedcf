package fairpull.engine.tracing;

/**
 * A colour in CIELAB, in which equal distances look about equally different.
 *
 * <p>From sRGB by its transfer curve and matrix, against the white D65; distances are CIE 1976 ΔE*ab, in which about 2.3 is just noticed.
 *
 * @param lightness L*, from 0 to 100
 * @param a from green (negative) to red
 * @param b from blue (negative) to yellow
 * @see "IEC 61966-2-1:1999 (sRGB); ISO/CIE 11664-4:2019 (CIELAB)"
 */
record Lab(double lightness, double a, double b) {
    private static final double WHITE_X = 0.95047;
    private static final double WHITE_Z = 1.08883;
    private static final double KNEE = 216.0 / 24389;
    private static final double SLOPE = 24389.0 / 27 / 116;
    private static final double[] LINEAR = linear();

    private static double[] linear() {
        double[] table = new double[256];
        for (int level = 0; level < table.length; level++) {
            double share = level / 255.0;
            table[level] = share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
        }
        return table;
    }

    /** {@return a colour given as {@code 0xRRGGBB}} */
    static Lab of(int rgb) {
        double red = LINEAR[rgb >> 16 & 255];
        double green = LINEAR[rgb >> 8 & 255];
        double blue = LINEAR[rgb & 255];
        double x = root((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / WHITE_X);
        double y = root(0.2126729 * red + 0.7151522 * green + 0.0721750 * blue);
        double z = root((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / WHITE_Z);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double root(double share) {
        return share > KNEE ? Math.cbrt(share) : SLOPE * share + 16.0 / 116;
    }

    /** {@return how different two colours look, ΔE*ab} */
    double distance(Lab other) {
        double dl = lightness - other.lightness;
        double da = a - other.a;
        double db = b - other.b;
        return Math.sqrt(dl * dl + da * da + db * db);
    }
}
