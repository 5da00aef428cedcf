package fairpull.report.write;

/** The paper that a sheet is printed on. */
public enum Paper {
    A4("210mm 297mm"), LETTER("8.5in 11in");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** {@return width and height, as a style sheet takes them} */
    public String size() {
        return size;
    }
}
