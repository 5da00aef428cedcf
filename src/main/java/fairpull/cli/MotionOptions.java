package fairpull.cli;

import fairpull.app.usecase.planning.TypedMotion;
import picocli.CommandLine.Option;

/** What a pull accelerates, for logs of speed without power. */
final class MotionOptions {
    @Option(names = "--moving-mass", paramLabel = "AMOUNT", description = "Where exports hold speed and time but no power: the mass "
            + "accelerated, rotating parts included, or the moment of inertia of the rollers with their radius, each with its standard "
            + "uncertainty where known: 1480kg, 1480±15kg, 12.5±0.1kg·m²@0.318m.")
    private String mass;

    @Option(names = "--coast-down", paramLabel = "F0,F1,F2", description = "What holds the car back on the road, in N, N·s/m and N·s²/m², "
            + "with standard uncertainties where known: 110±8,0.9±0.5,0.42±0.01.")
    private String coastDown;

    @Option(names = "--acceleration-window", paramLabel = "AMOUNT",
            description = "The width of the local fit that the acceleration comes from: 0.5s; needed with --moving-mass.")
    private String window;

    TypedMotion.Typing typed() {
        return new TypedMotion.Typing(mass, coastDown, window);
    }
}
