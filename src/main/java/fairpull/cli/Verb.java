package fairpull.cli;

import fairpull.app.usecase.Answer;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every verb has: help, the choice of JSON, and the way to print an answer. */
@Command(synopsisHeading = "Usage: ", descriptionHeading = "%n", parameterListHeading = "%n",
        optionListHeading = "%n", showDefaultValues = false, sortOptions = false, footerHeading = "%nFor instance:%n")
abstract class Verb implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "Print one JSON document and nothing else.")
    private boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help and do nothing.")
    private boolean help;

    /** Does the verb's work. */
    protected abstract void work() throws Exception;

    @Override
    public final Integer call() throws Exception {
        work();
        return status();
    }

    /** {@return the exit status once the work is done} */
    protected int status() {
        return CommandLineProgram.done();
    }

    /** Prints an answer in the form that was asked for. */
    protected final void answer(Answer answer) {
        print(json ? answer.json() : answer.text());
    }

    /** Prints a message for people; with {@code --json} it goes where messages go. */
    protected final void say(String message) {
        if (json) {
            spec.commandLine().getErr().println(message);
        } else {
            print(message);
        }
    }

    /** {@return now, to the second, with the zone's offset} */
    protected final OffsetDateTime now() {
        return program().now();
    }

    /** {@return the program this verb belongs to} */
    protected final CommandLineProgram program() {
        return (CommandLineProgram) spec.root().userObject();
    }

    /** {@return the options that were typed, by their first name} */
    protected final Stream<String> given() {
        return spec.commandLine().getParseResult().matchedOptions().stream().map(option -> option.longestName());
    }

    private void print(String text) {
        spec.commandLine().getOut().print(Answer.printed(text));
        spec.commandLine().getOut().flush();
    }
}
