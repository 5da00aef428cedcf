package fairpull.domain.rig;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The scatter that one table of repeated baselines showed, relative to the level of the measure.
 *
 * @param key what it holds for
 * @param source the name of the file or test it came from
 * @param dataSha256 SHA-256 of its data, by which the same data are not taken twice
 * @param addedAt when it was added
 * @param levelSi the level that shares refer to
 * @param mean the mean of the table over that level
 * @param scatter layer by layer
 * @param installs the means of all installs, sessions in the order of time
 */
public record RigRecord(RigKey key, String source, String dataSha256, OffsetDateTime addedAt, double levelSi, double mean,
        List<LayerScatter> scatter, List<InstallMean> installs) {
    /**
     * The mean of an install.
     *
     * @param session its session, a date where it can be one
     * @param install its label
     * @param pulls how many pulls are in it
     * @param mean over the level of the record
     */
    public record InstallMean(String session, String install, int pulls, double mean) {
        public InstallMean {
            if (session.isBlank() || install.isBlank() || pulls < 1 || !(mean > 0) || Double.isInfinite(mean)) {
                throw new IllegalArgumentException("an install mean needs session, install, at least one pull and a mean above 0");
            }
        }
    }

    public RigRecord {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(addedAt, "addedAt");
        scatter = List.copyOf(scatter);
        installs = List.copyOf(installs);
        if (!(levelSi > 0) || Double.isInfinite(levelSi) || !(mean > 0) || Double.isInfinite(mean)) {
            throw new IllegalArgumentException("a rig record needs a level and a mean above 0");
        }
        if (source.isBlank() || !dataSha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a rig record needs the name of its source and the SHA-256 of its data");
        }
        if (scatter.isEmpty() || installs.isEmpty()) {
            throw new IllegalArgumentException("a rig record needs scatter and installs");
        }
    }

    /** {@return the scatter of one layer, where the table tells it apart and there is evidence behind it} */
    public Optional<LayerScatter> of(Layer layer) {
        return scatter.stream().filter(one -> one.tells(layer)).findFirst();
    }
}
