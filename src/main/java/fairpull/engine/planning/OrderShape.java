package fairpull.engine.planning;

/**
 * What of an order of installs matters beyond its counts. Positions are in installs from the centre of the session, so that they come in
 * halves; sums are kept doubled (fourfold for squares) as whole numbers.
 *
 * @param letters the order, one session
 * @param countA installs of A
 * @param countB installs of B
 * @param lean twice the sum of the positions of B; 0 where a linear drift cannot pass for a change
 * @param bow four times (installs × the sum of squared positions of B − installs of B × the sum of all squared positions); 0 where a
 *     quadratic drift cannot either
 */
record OrderShape(String letters, int countA, int countB, int lean, int bow) {

    /** The shape of an order in letters A and B. */
    static OrderShape of(String letters) {
        int installs = letters.length();
        int countB = 0;
        int lean = 0;
        int squaresOfB = 0;
        int squares = 0;
        for (int i = 0; i < installs; i++) {
            int position = 2 * i - (installs - 1);
            squares += position * position;
            if (letters.charAt(i) == 'B') {
                countB++;
                lean += position;
                squaresOfB += position * position;
            }
        }
        return new OrderShape(letters, installs - countB, countB, lean, installs * squaresOfB - countB * squares);
    }

    /** Mean position of B less mean position of A, in installs; not a number where one is missing. */
    double meanLean() {
        return 0.5 * lean * (1.0 / countA + 1.0 / countB);
    }

    /** Mean squared position of B less that of A, in squared installs; not a number where one is missing. */
    double meanBow() {
        return bow / (4.0 * countA * countB);
    }

    boolean startsAndEndsWithA() {
        return letters.startsWith("A") && letters.endsWith("A");
    }

    /** How often one part is taken off and the other fitted. */
    int exchanges() {
        int exchanges = 0;
        for (int i = 1; i < letters.length(); i++) {
            exchanges += letters.charAt(i) == letters.charAt(i - 1) ? 0 : 1;
        }
        return exchanges;
    }
}
