package fairpull.app.usecase.judging;

import fairpull.domain.InputException;
import fairpull.domain.finding.Finding;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullTable;
import fairpull.domain.pull.DecimalMark;
import fairpull.engine.judging.Judge;
import fairpull.io.table.PullTableReader;
import fairpull.io.table.TableOptions;
import java.nio.file.Path;
import java.util.Optional;

/** Judges a plain table of pulls. */
public final class JudgeTable {
    private JudgeTable() {
    }

    /** {@return the finding of a table under some settings} */
    public static Finding judge(Path file, JudgeSettings settings, String unit, Optional<DecimalMark> decimalMark) {
        PullTable table = PullTableReader.read(file, new TableOptions(settings.covariates(), settings.drift(), unit, decimalMark));
        try {
            return Judge.judge(table, settings);
        } catch (IllegalArgumentException notEstimable) {
            throw new InputException(InputException.Place.of(file.getFileName().toString()), notEstimable.getMessage(),
                    "judge it with fewer terms, or with pulls that tell them apart");
        }
    }
}
