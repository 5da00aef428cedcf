package fairpull.report.write;

/** The paper that a sheet or a report is printed on. */
public enum Paper {
    A4("210mm 297mm", 210), LETTER("8.5in 11in", 215.9);

    private final String size;
    private final double widthMm;

    Paper(String size, double widthMm) {
        this.size = size;
        this.widthMm = widthMm;
    }

    /** {@return width and height, as a style sheet takes them} */
    public String size() {
        return size;
    }

    /** {@return the width in millimetres} */
    double widthMm() {
        return widthMm;
    }
}
