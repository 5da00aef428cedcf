package fairpull.io.json;

import fairpull.domain.pull.Seal;

/** The seal file. */
public final class SealJson {
    private SealJson() {
    }

    /** {@return the seal in a text; {@code file} is for messages} */
    public static Seal read(String text, String file) {
        return JsonFiles.read(text, Seal.class, file, 1);
    }

    /** {@return the seal without blanks, for its hash} */
    public static String canonical(Seal seal) {
        return JsonFiles.canonical(seal);
    }

    /** {@return the seal for people to read, indented} */
    public static String indented(Seal seal) {
        return JsonFiles.indented(seal);
    }
}
