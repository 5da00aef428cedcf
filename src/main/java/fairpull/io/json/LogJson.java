package fairpull.io.json;

import fairpull.domain.pull.LogRecord;

/** One record of the log as one line. */
public final class LogJson {
    private LogJson() {
    }

    /** {@return the record in a line; file and line number are for messages} */
    public static LogRecord read(String line, String file, int lineNumber) {
        return JsonFiles.read(line, LogRecord.class, file, lineNumber);
    }

    /** {@return the record as one line, without its line feed} */
    public static String line(LogRecord record) {
        return JsonFiles.canonical(record);
    }
}
