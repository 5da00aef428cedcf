package fairpull.cli;

import fairpull.app.usecase.planning.NewPlan;
import java.util.List;
import picocli.CommandLine.Option;

/** How pulls become curves over engine speed. */
final class CurveOptions {
    @Option(names = "--bandwidth", paramLabel = "RPM", description = "The bandwidth that curves over engine speed are smoothed to; a rig "
            + "record matches only with the same.")
    private String bandwidth;

    @Option(names = "--grid", paramLabel = "FROM-TO/STEP", description = "The engine speeds at which curves are compared, in rpm: "
            + "3000-6500/50. Without it they are those that all pulls cover, and the finding says that they were not declared.")
    private String grid;

    @Option(names = "--tip-in", paramLabel = "AMOUNT", description = "What is not scored after full throttle: 300rpm, 0.5s; given twice, "
            + "both have to pass. The throttle column of the exports is then read, where there is one.")
    private List<String> tipIn = List.of();

    @Option(names = "--lift-off", paramLabel = "AMOUNT", description = "What is not scored before lift-off, likewise.")
    private List<String> liftOff = List.of();

    NewPlan.CurveTyped typed() {
        return new NewPlan.CurveTyped(bandwidth, grid, tipIn, liftOff);
    }
}
