package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.TypedStandard;
import fairpull.domain.air.Induction;
import fairpull.domain.plan.Correction;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** A correction standard with what it needs beside the air. */
final class StandardOptions {
    @Option(names = "--standard", required = true, paramLabel = "STANDARD", description = "sae-j1349, iso-1585, iso-1585-ci, eec-80-1269, "
            + "din-70020 or sae-j607; none: back to what was measured.")
    private String standard;

    @Option(names = "--from", paramLabel = "STANDARD", description = "The values are already corrected to this one: it is undone first.")
    private String from;

    @Option(names = "--efficiency", paramLabel = "X", description = "Mechanical efficiency for sae-j1349, such as 0.85.")
    private String efficiency;

    @Option(names = "--induction", paramLabel = "na|supercharged|turbocharged", description = "How the engine gets its air.")
    private String induction;

    @Option(names = "--fuel-rate", paramLabel = "X", description = "iso-1585-ci: fuel burnt, such as 8g/s.")
    private String fuelRate;

    @Option(names = "--displacement", paramLabel = "V", description = "iso-1585-ci: swept volume, such as 4L.")
    private String displacement;

    @Option(names = "--engine-speed", paramLabel = "N", description = "iso-1585-ci: engine speed, such as 2000rpm.")
    private String engineSpeed;

    @Option(names = "--strokes", paramLabel = "2|4", description = "iso-1585-ci: strokes of a cycle.")
    private String strokes;

    @Option(names = "--boost-ratio", paramLabel = "X", description = "iso-1585-ci: absolute pressure after the compressor over before it.")
    private String boostRatio;

    TypedStandard typed() {
        return new TypedStandard(JudgingOptions.constant("--standard", standard, Correction.values()),
                Optional.ofNullable(from).map(word -> JudgingOptions.constant("--from", word, Correction.values()))
                        .filter(known -> known != Correction.NONE),
                Optional.ofNullable(efficiency), Optional.ofNullable(induction).map(StandardOptions::induction),
                Optional.ofNullable(fuelRate), Optional.ofNullable(displacement), Optional.ofNullable(engineSpeed),
                Optional.ofNullable(strokes), Optional.ofNullable(boostRatio));
    }

    private static Induction induction(String word) {
        return Arrays.stream(Induction.values()).filter(kind -> kind.id().equalsIgnoreCase(word.strip())).findFirst()
                .orElseThrow(() -> new UsageException("--induction", "expected one of " + Arrays.stream(Induction.values())
                        .map(Induction::id).collect(Collectors.joining(", ")) + "; found “" + word + "”"));
    }
}
