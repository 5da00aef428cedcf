package fairpull.domain;

import java.util.OptionalInt;

/**
 * Input that cannot be used: the one exception that a user causes and reads. It says where and what to do.
 */
public final class InputException extends RuntimeException {
    private final transient Place place;
    private final transient Remedy remedy;

    /**
     * Where the trouble is.
     *
     * @param file name of the file, empty where there is none
     * @param line counted from 1, where there is one
     * @param column name or number of the column, empty where there is none
     */
    public record Place(String file, OptionalInt line, String column) {
        /** {@return no place at all} */
        public static Place none() {
            return new Place("", OptionalInt.empty(), "");
        }

        /** {@return a file as a whole} */
        public static Place of(String file) {
            return new Place(file, OptionalInt.empty(), "");
        }

        /** {@return a line of a file} */
        public static Place of(String file, int line) {
            return new Place(file, OptionalInt.of(line), "");
        }

        /** {@return a column in a line of a file} */
        public static Place of(String file, int line, String column) {
            return new Place(file, OptionalInt.of(line), column);
        }
    }

    /**
     * Says what is wrong, where, and what to do.
     *
     * @param place where
     * @param problem what is wrong, in a few words
     * @param remedy what to do, in a few words
     */
    public InputException(Place place, String problem, String remedy) {
        this(place, problem, Remedy.everywhere(remedy));
    }

    /**
     * Says what is wrong, where, and what to do on each surface.
     *
     * @param place where
     * @param problem what is wrong, in a few words
     * @param remedy what to do, in a few words
     */
    public InputException(Place place, String problem, Remedy remedy) {
        super(problem);
        this.place = place;
        this.remedy = remedy;
    }

    /** {@return where the trouble is} */
    public Place place() {
        return place;
    }

    /** {@return what to do} */
    public Remedy remedy() {
        return remedy;
    }

    /** {@return place, problem and what to do on the command line, in one line} */
    public String oneLine() {
        return oneLine(Remedy.Surface.COMMAND_LINE);
    }

    /** {@return place, problem and what to do on a surface, in one line} */
    public String oneLine(Remedy.Surface surface) {
        StringBuilder line = new StringBuilder();
        if (!place.file().isEmpty()) {
            line.append(place.file());
            place.line().ifPresent(number -> line.append(", line ").append(number));
            if (!place.column().isEmpty()) {
                line.append(", column ").append(place.column());
            }
            line.append(": ");
        }
        line.append(getMessage());
        if (!remedy.on(surface).isEmpty()) {
            line.append("; ").append(remedy.on(surface));
        }
        return line.toString().replaceAll("\\R", " ");
    }
}
