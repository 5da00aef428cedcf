package fairpull.app.usecase.pulls;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.Receipt;
import fairpull.domain.plan.Measure;
import fairpull.io.json.ReceiptJson;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the command line answers after pulls came in. */
public final class TakenPulls {
    private TakenPulls() {
    }

    /** {@return the answer: each pull with its values and doubts} */
    public static Answer answer(List<ImportPulls.Taken> pulls) {
        String text = pulls.stream()
                .map(one -> one.pull() + "  " + one.file() + values(one.values()) + doubts(one.doubts()))
                .collect(Collectors.joining("\n"));
        return new Answer(text, ReceiptJson.taken(pulls.stream()
                .map(one -> new ReceiptJson.Taken(one.pull(), one.file(), one.values(), remedied(one.doubts()))).toList()));
    }

    private static List<String> remedied(List<String> doubts) {
        return doubts.stream().map(doubt -> doubt.equals(FileCheck.CORRECTION_UNKNOWN) ? doubt + "; say so with --corrected" : doubt)
                .toList();
    }

    private static String doubts(List<String> doubts) {
        return remedied(doubts).stream().map(doubt -> "\n      doubt: " + doubt).collect(Collectors.joining());
    }

    private static String values(Map<Measure, Double> values) {
        return values.entrySet().stream().map(value -> "  " + value.getKey().name() + " "
                + Receipt.figure(value.getKey(), value.getValue())).collect(Collectors.joining());
    }
}
