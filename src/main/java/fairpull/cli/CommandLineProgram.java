package fairpull.cli;

import fairpull.app.task.CancelledException;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.Version;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs a verb and turns every kind of trouble into one line and an exit status. */
@Command(name = "fairpull", mixinStandardHelpOptions = true, versionProvider = CommandLineProgram.VersionText.class,
        description = "Plans a fair back-to-back power test, judges it, and says what would overturn the answer.",
        subcommands = {
            OpenVerb.class,
            SizeVerb.class,
            SearchVerb.class,
            CorrectVerb.class,
            SoakVerb.class,
            RigVerb.class,
            NewVerb.class,
            CheckVerb.class,
            SealVerb.class,
            SheetVerb.class,
            ImportVerb.class,
            NoteVerb.class,
            AmendVerb.class,
            ExcludeVerb.class,
            JudgeVerb.class,
            ReportVerb.class,
            ProveVerb.class,
            AuditVerb.class,
            DemoVerb.class},
        synopsisSubcommandLabel = "VERB", footer = {"",
            "A first test:",
            "  fairpull size --sequence ABABA --pulls 5 --pull-scatter 1.2 --refit-scatter 0.6 --gain 3",
            "  fairpull demo        the whole job, step by step, on invented data",
            "",
            "Exit status: 0 done, 2 wrong usage, 3 input that cannot be used, 1 a fault of the program."})
public final class CommandLineProgram implements Runnable {
    /** The status of a verb after which the program goes on: its window is open. */
    public static final int STAYS = -1;

    private static final int DONE = 0;
    private static final int FAULT = 1;
    private static final int WRONG_USAGE = 2;
    private static final int UNUSABLE_INPUT = 3;
    /** What a shell reports of a program that was interrupted: 128 and the number of the signal. */
    private static final int INTERRUPTED = 130;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Clock clock;
    private final boolean onTerminal;
    private final Opener opener;
    private Optional<WatchedWork> work = Optional.empty();

    /** Makes a program that prints to the given writers and takes the time from a clock. */
    public CommandLineProgram(PrintWriter out, PrintWriter err, Clock clock) {
        this(out, err, clock, false, test -> {
            throw new InputException(Place.none(), "no window belongs to this run", "use the commands; `fairpull --help` lists them");
        });
    }

    /** {@return a program that prints where this one does, at another time} */
    CommandLineProgram at(Clock otherClock) {
        return new CommandLineProgram(out, err, otherClock);
    }

    /** Makes one that shows the progress of long work where it runs on a terminal, and knows who opens the window. */
    CommandLineProgram(PrintWriter out, PrintWriter err, Clock clock, boolean onTerminal, Opener opener) {
        this.onTerminal = onTerminal;
        this.opener = opener;
        this.out = out;
        this.err = err;
        this.clock = clock;
    }

    /** Gives the version of the build. */
    static final class VersionText implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"fairpull " + Version.text()};
        }
    }

    /** Opens the window on a test, or on a new one. */
    public interface Opener {
        /** Opens it; returns as soon as it is on its way. */
        void open(Optional<Path> test) throws IOException;
    }

    /** {@return the exit status of a command line; {@link #STAYS} while a window is open} */
    public static int run(String[] arguments, Opener opener) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        return new CommandLineProgram(new PrintWriter(out, true), new PrintWriter(err, true), Clock.systemDefaultZone(),
                System.console() != null, opener).runVerb(List.of(arguments));
    }

    /** {@return the exit status of a command line} */
    public int runVerb(List<String> arguments) {
        CommandLine line = new CommandLine(this)
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(100)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setAbbreviatedOptionsAllowed(false)
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(CommandLineProgram::wrongUsage)
                .setExecutionExceptionHandler((trouble, command, parsed) -> explain(trouble, command));
        line.registerConverter(Path.class, CommandLineProgram::path);
        try {
            return line.execute(arguments.toArray(String[]::new));
        } finally {
            work.ifPresent(WatchedWork::end);
        }
    }

    /** {@return what watches the long work of a verb until the program ends} */
    WatchedWork watchedWork() {
        WatchedWork watched = new WatchedWork(err, onTerminal);
        work = Optional.of(watched);
        return watched;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static Path path(String word) {
        try {
            return Path.of(word);
        } catch (InvalidPathException impossible) {
            throw new TypeConversionException("“" + word + "” is not a name that a file can have");
        }
    }

    private static int wrongUsage(ParameterException trouble, String[] arguments) {
        PrintWriter err = trouble.getCommandLine().getErr();
        err.println("fairpull: " + oneLine(problem(trouble)) + "; see `" + trouble.getCommandLine().getCommandSpec().qualifiedName()
                + " --help`");
        return WRONG_USAGE;
    }

    private static String problem(ParameterException trouble) {
        if (trouble instanceof UnmatchedArgumentException extra && !extra.isUnknownOption()) {
            boolean verb = extra.getCommandLine().getParent() == null;
            return "“" + extra.getUnmatched().get(0) + "” is " + (verb ? "no verb" : "not expected here");
        }
        return trouble.getMessage();
    }

    private static int explain(Exception trouble, CommandLine command) {
        if (trouble instanceof InputException unusable) {
            command.getErr().println("fairpull: " + oneLine(unusable.oneLine()));
            return UNUSABLE_INPUT;
        }
        if (trouble instanceof CancelledException stopped) {
            command.getErr().println("fairpull: " + stopped.getMessage());
            return INTERRUPTED;
        }
        if (trouble instanceof UsageException misuse) {
            command.getErr().println("fairpull: " + oneLine(misuse.getMessage()));
            return WRONG_USAGE;
        }
        if (trouble instanceof FileSystemException || trouble instanceof UncheckedIOException || trouble instanceof IOException) {
            command.getErr().println("fairpull: " + oneLine(disk(trouble)));
            return UNUSABLE_INPUT;
        }
        command.getErr().println("fairpull: a fault of the program: " + oneLine(String.valueOf(trouble)) + details(trouble));
        return FAULT;
    }

    private static String disk(Exception trouble) {
        Throwable cause = trouble instanceof UncheckedIOException wrapped ? wrapped.getCause() : trouble;
        return cause instanceof FileSystemException file ? file.getFile() + ": " + reason(file) + "; " + remedy(file)
                : cause.getMessage() + "; look whether the disk is full or the file is in use";
    }

    private static String reason(FileSystemException file) {
        return file.getReason() != null ? file.getReason()
                : file instanceof AccessDeniedException ? "access is denied"
                : file instanceof NoSuchFileException ? "no such file or folder"
                : file instanceof FileAlreadyExistsException ? "there is a file of that name, where a folder is needed"
                : file.getClass().getSimpleName().replace("Exception", "");
    }

    private static String remedy(FileSystemException file) {
        boolean isFull = file.getReason() != null && file.getReason().matches("(?i).*(space|quota|too large).*");
        return isFull ? "nothing was written; make room on that disk, then give the command again"
                : "look whether it exists and may be read or written";
    }

    /** A stack trace is for whoever mends the program: it goes to a file, never to the user. */
    private static String details(Exception trouble) {
        StringWriter trace = new StringWriter();
        trouble.printStackTrace(new PrintWriter(trace));
        try {
            Path file = Files.createTempFile("fairpull-fault-", ".txt");
            Files.writeString(file, trace.toString());
            return "; details for a bug report are in " + file;
        } catch (IOException noDetails) {
            return "";
        }
    }

    /** Control characters of a file or an argument are not let loose on the terminal. */
    private static String oneLine(String text) {
        return text.replaceAll("\\s*\\R\\s*|\\p{Cc}", " ");
    }

    /** {@return now, to the second, with the zone's offset} */
    OffsetDateTime now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    }

    /** {@return who opens the window} */
    Opener opener() {
        return opener;
    }

    /** {@return the exit status of a verb that did its work} */
    static int done() {
        return DONE;
    }
}
