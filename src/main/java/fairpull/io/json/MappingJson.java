package fairpull.io.json;

import fairpull.domain.pull.Mapping;
import java.util.List;

/** The mapping file: one mapping a header. */
public final class MappingJson {
    private MappingJson() {
    }

    private record MappingFile(int schemaVersion, List<Mapping> mappings) {
        MappingFile {
            if (schemaVersion != PlanJson.SCHEMA_VERSION) {
                throw new IllegalArgumentException("schema version " + schemaVersion + " is not known to this program, which reads version "
                        + PlanJson.SCHEMA_VERSION);
            }
            mappings = List.copyOf(mappings);
        }
    }

    /** {@return the mappings in a text; {@code file} is for messages} */
    public static List<Mapping> read(String text, String file) {
        return JsonFiles.read(text, MappingFile.class, file, 1).mappings();
    }

    /** {@return the mappings for people to read, indented} */
    public static String indented(List<Mapping> mappings) {
        return JsonFiles.indented(new MappingFile(PlanJson.SCHEMA_VERSION, mappings));
    }

    /** {@return one mapping without blanks, for its hash} */
    public static String canonical(Mapping mapping) {
        return JsonFiles.canonical(mapping);
    }
}
