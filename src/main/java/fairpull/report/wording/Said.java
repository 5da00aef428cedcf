package fairpull.report.wording;

/**
 * One answer beside the verdict: what was found in a few words, and the figures behind it.
 *
 * @param head a few words that say what was found
 * @param text the figures
 */
public record Said(String head, String text) {
}
