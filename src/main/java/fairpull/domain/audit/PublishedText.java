package fairpull.domain.audit;

import java.util.regex.Pattern;

/** The texts of a publication: strangers write them, so that they are bounded and hold nothing that cannot be printed. */
final class PublishedText {
    /** Of a figure or a curve. */
    static final int LONGEST_NAME = 100;
    /** Of a title, a claim and what was changed: a fair repeat is named and claimed by them. */
    static final int LONGEST_WORDS = 300;
    /** Of a remark and a source. */
    static final int LONGEST = 2000;
    /** Control characters but for tabs and ends of lines, halves of characters, and what turns the direction of writing around. */
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\p{Cs}\u202a-\u202e\u2066-\u2069&&[^\t\n\r]]");

    private PublishedText() {
    }

    /** Refuses, as a part of the publication, a text that is too long or cannot be printed. */
    static void require(String part, String what, String text, int longest) {
        if (text.length() > longest) {
            throw new RefusedPart(part, what + " has " + text.length() + " characters; write at most " + longest);
        }
        if (UNPRINTABLE.matcher(text).find()) {
            throw new RefusedPart(part, what + " holds a control character, which cannot be printed; take it out");
        }
    }

    /** Refuses an empty one as well. */
    static void requireWords(String part, String what, String text, int longest) {
        if (text.isBlank()) {
            throw new RefusedPart(part, what + " is empty; write what it says");
        }
        require(part, what, text, longest);
    }
}
