package fairpull.domain.proof;

/**
 * What a simulation showed. Each campaign's scatter is used twice: with no change, and with the gain added.
 *
 * @param noChange how the campaigns without a change ended
 * @param withGain how the same campaigns with the gain added ended
 */
public record ProofAnswer(Tally noChange, Tally withGain) {
    /** {@return both together} */
    public ProofAnswer plus(ProofAnswer other) {
        return new ProofAnswer(noChange.plus(other.noChange), withGain.plus(other.withGain));
    }

    /** {@return how often a change was announced where there is none} */
    public Share errorRate() {
        return noChange.share(noChange.gain() + noChange.loss());
    }

    /** {@return how often the gain was found} */
    public Share power() {
        return withGain.share(withGain.gain());
    }

    /** {@return how often the last interval held the true gain, among campaigns that could be judged; of all where none could} */
    public Share coverage() {
        long judged = withGain.campaigns() - withGain.notJudged();
        return new Share(withGain.covered(), judged == 0 ? withGain.campaigns() : judged);
    }
}
