package fairpull.report.wording;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Notice;
import fairpull.domain.pull.PullId;

/** The command that puts a reading right: the same export again, otherwise read, with the reason. */
final class ReadAnewWords {
    private ReadAnewWords() {
    }

    /** {@return how to do it: the command for the first pull that a notice names, or what a window has for it} */
    static String remedy(Notice notice, String options, Surface surface) {
        return new Remedy(command(notice, options),
                "leave it out with a reason, beneath the table of pulls, and take the export in as another pull").on(surface);
    }

    private static String command(Notice notice, String options) {
        String first = notice.names().get(0).split("[ ,]")[0];
        return "fairpull import TEST FILE " + PullId.parse(first).map(ReadAnewWords::place).orElse("--install B1 --pull 1") + " " + options
                + " --because \"…\"";
    }

    private static String place(PullId pull) {
        return "--install " + pull.install() + (pull.warmUp() ? " --warm-up" : "") + " --pull " + pull.number();
    }
}
