package fairpull.app.usecase.conditions;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.TypedAir;
import fairpull.app.usecase.typing.TypedSensors;
import fairpull.app.usecase.typing.TypedStandard;
import fairpull.app.usecase.typing.TypedWindow;
import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.Corrected;
import fairpull.domain.air.Simulation;
import fairpull.domain.air.Standard;
import fairpull.domain.air.WindowQuestion;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.engine.air.Correcting;
import fairpull.engine.air.Factor;
import fairpull.engine.air.WindowSearch;
import fairpull.io.json.AirJson;
import fairpull.report.wording.AirNoticeWords;
import fairpull.report.wording.AirWords;
import fairpull.report.wording.WindowWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Corrects one reading: factor, air, uncertainty, warnings, and the window in which pulls may run. */
public final class CorrectAir {
    private CorrectAir() {
    }

    /**
     * What is asked.
     *
     * @param standard to which standard, and from which
     * @param air the air now
     * @param first the air at the first install, as {@link TypedAir#first} reads it
     * @param power a value to be corrected, with its unit
     * @param sensors uncertainties of the readings
     * @param simulation a Monte Carlo check of the uncertainty
     * @param window the question about the ambient window
     */
    public record Request(TypedStandard standard, TypedAir air, Optional<String> first, Optional<String> power, TypedSensors sensors,
            Optional<Simulation> simulation, Optional<TypedWindow> window) {
    }

    /** {@return the answer on the command line} */
    public static Answer answer(Request request) {
        return answer(request, Surface.COMMAND_LINE);
    }

    /** {@return the answer on a surface} */
    static Answer answer(Request request, Surface surface) {
        refuseMissing(request);
        Standard standard = request.standard().to();
        AirReading reading = request.air().reading();
        Optional<AirReading> first = request.first().map(request.air()::first);
        AirSensors sensors = request.sensors().sensors();
        Corrected corrected = Correcting.answer(new Correcting.Question(standard, request.standard().undone(), reading, first, sensors,
                request.standard().induction(), request.simulation()));
        Optional<Amount> value = request.power().map(CorrectAir::value);
        Optional<AmbientWindow> window = request.window().map(typed -> window(typed.question(reading, first, value), standard, sensors));
        List<String> warnings = corrected.notices().stream().map(notice -> AirNoticeWords.sentence(notice, surface)).toList();
        StringBuilder text = new StringBuilder(AirWords.paragraphs(corrected, value, request.sensors().guessed()));
        warnings.forEach(warning -> text.append("Warning: ").append(warning).append('\n'));
        window.ifPresent(answer -> text.append('\n').append(WindowWords.text(answer, request.window().flatMap(TypedWindow::modelError)
                .isEmpty(), surface)));
        return new Answer(text.toString(), AirJson.document(corrected, warnings, value, window, request.sensors().guessed()));
    }

    /** Everything that is missing, in one line. */
    private static void refuseMissing(Request request) {
        boolean window = request.window().isPresent();
        List<String> missing = new ArrayList<>(request.air().missing(window && Factor.usesHumidity(request.standard().standard())));
        missing.addAll(request.standard().missing());
        if (window && request.window().get().worthwhile() == null) {
            missing.add("--worthwhile 1.5%");
        }
        if (!missing.isEmpty()) {
            throw new UsageException("correct" + (window ? " --window" : ""), new Remedy((missing.size() == 1 ? "one option is"
                    : missing.size() + " options are") + " missing; add " + String.join(" ", missing), "Still to be typed: "
                    + missing.stream().map(CorrectAir::named).distinct().collect(Collectors.joining(", ")) + "."));
        }
    }

    /** An option without its dashes and its example is the name of what it gives. */
    private static String named(String option) {
        return option.replaceFirst("^--", "").split(" ", 2)[0].replace('-', ' ');
    }

    private static AmbientWindow window(WindowQuestion question, Standard standard, AirSensors sensors) {
        if (standard.correction() == Correction.NONE) {
            throw new UsageException("--window", "needs a standard to correct to, such as --standard sae-j1349");
        }
        return WindowSearch.window(standard, question, sensors);
    }

    private static Amount value(String text) {
        return Amount.parse(text).filter(amount -> amount.unit().quantity() == Quantity.POWER
                || amount.unit().quantity() == Quantity.TORQUE).orElseThrow(() -> new UsageException("--power",
                "expected a power or torque with its unit, such as 300hp; found “" + text + "”"));
    }
}
