package fairpull.report.wording;

import fairpull.domain.finding.AmendmentSeen;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Seal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was fixed before the day, and what was changed since. */
public final class SealWords {
    private SealWords() {
    }

    /** {@return one line: seal, amendments, pulls} */
    public static String line(Judgement judgement) {
        long counted = judgement.pulls().stream().filter(pull -> !pull.pull().warmUp()).count();
        long used = judgement.pulls().stream().filter(pull -> pull.fate() == Fate.USED).count();
        return seal(judgement) + " · " + (judgement.amendments().isEmpty() ? "no amendments"
                : Numbers.count(judgement.amendments().size(), "amendment")) + " · "
                + Numbers.count(counted, "counted pull") + ", " + used + " used";
    }

    /** {@return the seal in words} */
    public static String seal(Judgement judgement) {
        return judgement.seal().map(seal -> "Sealed " + Times.full(seal.at()) + ", code " + seal.code()).orElse("Not sealed");
    }

    /** {@return the code of a seal in a few words} */
    public static String code(Optional<Seal> seal) {
        return seal.map(known -> "seal " + known.code()).orElse("not sealed");
    }

    /** {@return each amendment: when, before or after the first data, why, and what was changed} */
    public static List<Said> amendments(Judgement judgement) {
        return amendments(judgement.plan(), judgement.amendments());
    }

    /** {@return each amendment: when, before or after the first data, why, and what was changed} */
    public static List<Said> amendments(Plan plan, List<AmendmentSeen> amendments) {
        ChangeWords words = new ChangeWords(plan, amendments.stream().flatMap(seen -> seen.amendment().changes().stream()).toList());
        List<Said> said = new ArrayList<>();
        for (AmendmentSeen seen : amendments) {
            String changes = seen.amendment().changes().stream().map(change -> change(words, change)).collect(Collectors.joining("; "));
            said.add(new Said(Times.full(seen.at()) + (seen.afterFirstData() ? ", after the first data" : ", before the first data"),
                    seen.amendment().reason() + (changes.isEmpty() ? "" : " (" + changes + ")")));
        }
        return said;
    }

    private static String change(ChangeWords words, LogEntry.Change change) {
        if (change.before().isBlank() && change.after().isBlank()) {
            return ChangeWords.name(change.place());
        }
        return words.sentence(change);
    }
}
