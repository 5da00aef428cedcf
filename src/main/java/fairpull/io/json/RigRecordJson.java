package fairpull.io.json;

import com.fasterxml.jackson.databind.JsonNode;
import fairpull.domain.InputException;
import fairpull.domain.Remedy;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import java.time.OffsetDateTime;
import java.util.List;

/** The file of a rig record. */
public final class RigRecordJson {
    /** The version of the file format that this program writes, and the only one there is so far. */
    public static final int SCHEMA_VERSION = 1;

    private RigRecordJson() {
    }

    private record RecordFile(int rigRecordVersion, RigKey key, String source, String dataSha256, OffsetDateTime addedAt, double levelSi,
            double mean, List<LayerScatter> scatter, List<RigRecord.InstallMean> installs) {
        /** What a record refuses is refused while the file is read, so that its line is known. */
        RecordFile {
            new RigRecord(key, source, dataSha256, addedAt, levelSi, mean, scatter, installs);
        }

        RigRecord record() {
            return new RigRecord(key, source, dataSha256, addedAt, levelSi, mean, scatter, installs);
        }
    }

    /** {@return the record in a text; {@code file} is for messages} */
    public static RigRecord read(String text, String file) {
        JsonNode version = JsonFiles.tree(text, file).path("rigRecordVersion");
        if (!version.isInt()) {
            throw new InputException(InputException.Place.of(file), "no rigRecordVersion: this is not a rig record",
                    new Remedy("keep only files that `fairpull rig add` wrote under this ending",
                            "keep only files of rig records under this ending"));
        }
        if (version.intValue() != SCHEMA_VERSION) {
            throw new InputException(InputException.Place.of(file), "rig record version " + version.intValue()
                    + " is not known to this program, which reads version " + SCHEMA_VERSION,
                    "use the version of the program that wrote it, or a newer one");
        }
        return JsonFiles.read(text, RecordFile.class, file, 1).record();
    }

    /** {@return the record for people to read, indented} */
    public static String indented(RigRecord record) {
        return JsonFiles.indented(new RecordFile(SCHEMA_VERSION, record.key(), record.source(), record.dataSha256(), record.addedAt(),
                record.levelSi(), record.mean(), record.scatter(), record.installs()));
    }
}
