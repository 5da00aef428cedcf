package fairpull.cli;

import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.keeping.AmendPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code amend}: changes a sealed plan. */
@Command(name = "amend",
        description = "Changes a sealed plan, with the reason. Every finding lists the amendments and says for each whether it came "
                + "before or after the first data.",
        footer = {"  fairpull amend pump-test --set sequence.sessions.0.installs.4.countedPulls=3 \\",
            "      --because \"rain from four o'clock\"",
            "  fairpull amend pump-test --set question.worthwhileGainSi=4hp --because \"typing mistake\""})
final class AmendVerb extends Verb {
    @Parameters(paramLabel = "TEST", description = "Folder of a test.")
    private Path folder;

    @Option(names = "--set", paramLabel = "PLACE=VALUE",
            description = "A place of plan.json and its new value, in SI or as an amount with its unit; "
            + "may be given several times.")
    private List<String> places = List.of();

    @Option(names = "--claim", paramLabel = "AMOUNT", description = "A further claim “at least …”, for one engine speed as 5hp@4500rpm; "
            + "after the first data the band judges it. May be given several times.")
    private List<String> claims = List.of();

    @Option(names = "--plan", paramLabel = "FILE", description = "A plan file that takes the plan's place.")
    private Path replacement;

    @Option(names = "--because", required = true, paramLabel = "WHY", description = "The reason.")
    private String because;

    @Override
    protected void work() throws IOException {
        if (because.isBlank()) {
            throw new UsageException("--because", "needs a reason");
        }
        if (places.isEmpty() && claims.isEmpty() && replacement == null) {
            throw new UsageException("--set", "nothing to change; give --set PLACE=VALUE, --claim AMOUNT or --plan FILE");
        }
        answer(Receipt.amended(folder, AmendPlan.amend(folder, Pairs.of("--set", places), Optional.ofNullable(replacement), claims,
                because, now())));
    }
}
