package fairpull.report.wording;

import fairpull.domain.finding.Notice;
import fairpull.domain.pull.PullId;

/** The command that puts a reading right: the same export again, otherwise read, with the reason. */
final class ReadAnewWords {
    private ReadAnewWords() {
    }

    /** {@return the command for the first pull that a notice names} */
    static String command(Notice notice, String options) {
        String first = notice.names().get(0).split("[ ,]")[0];
        return "fairpull import TEST FILE " + PullId.parse(first).map(ReadAnewWords::place).orElse("--install B1 --pull 1") + " " + options
                + " --because \"…\"";
    }

    private static String place(PullId pull) {
        return "--install " + pull.install() + (pull.warmUp() ? " --warm-up" : "") + " --pull " + pull.number();
    }
}
