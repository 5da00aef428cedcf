package fairpull.io.folder;

import java.math.BigInteger;

/** The short code of a seal: the first fifty bits of the plan's hash as ten letters and digits that are not mistaken for others. */
final class SealCode {
    /** Digits and letters without I, L, O and U: Crockford's base 32. */
    private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LETTERS = 10;
    private static final int BITS_A_LETTER = 5;

    private SealCode() {
    }

    /** {@return the code of a SHA-256 in hexadecimal, parted 4-4-2} */
    static String of(String sha256) {
        BigInteger hash = new BigInteger(sha256, 16);
        StringBuilder code = new StringBuilder();
        for (int i = 1; i <= LETTERS; i++) {
            code.append(ALPHABET.charAt(hash.shiftRight(256 - i * BITS_A_LETTER).intValue() & 31));
        }
        return code.insert(8, '-').insert(4, '-').toString();
    }
}
