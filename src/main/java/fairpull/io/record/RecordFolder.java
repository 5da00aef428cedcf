package fairpull.io.record;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.rig.RigRecord;
import fairpull.io.folder.AtomicWrite;
import fairpull.io.folder.Bounded;
import fairpull.io.folder.NewFolders;
import fairpull.io.folder.StraightPath;
import fairpull.io.json.RigRecordJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The folder of rig records. Files end in {@code .rig.json}; their names are made here from letters, digits and hyphens, and nothing
 * outside the folder is read or written: a link in it is refused.
 */
public final class RecordFolder {
    private static final String ENDING = ".rig.json";
    private static final long MOST_BYTES = 4L << 20;
    private static final int MOST_RECORDS = 10_000;
    private static final int LONGEST_NAME = 40;
    private static final int HASH_DIGITS = 12;

    private final Path folder;

    private RecordFolder(Path folder) {
        this.folder = folder;
    }

    /** {@return a folder of records that is there} */
    public static RecordFolder open(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(Place.of(folder.toString()), "there is no such folder of rig records",
                    new Remedy("give the folder that `fairpull rig add … --records FOLDER` wrote to", "choose the folder of a rig record"));
        }
        return new RecordFolder(folder);
    }

    /** {@return a folder of records; where it is not there, it is made with the first record} */
    public static RecordFolder openOrMake(Path folder) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new InputException(Place.of(folder.toString()), "this is a file", "give a folder for the rig records");
        }
        return new RecordFolder(StraightPath.of(folder));
    }

    /** {@return all records, in the order in which they were added} */
    public List<RigRecord> records() throws IOException {
        List<RigRecord> records = new ArrayList<>();
        for (Path file : files()) {
            records.add(record(file));
        }
        records.sort((one, other) -> {
            int byTime = one.addedAt().toInstant().compareTo(other.addedAt().toInstant());
            return byTime != 0 ? byTime : one.dataSha256().compareTo(other.dataSha256());
        });
        return records;
    }

    /** {@return whether a file has the name of a rig record} */
    public static boolean isRecord(Path file) {
        return file.getFileName().toString().endsWith(ENDING);
    }

    /** {@return the record in a file} */
    public static RigRecord record(Path file) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new InputException(Place.of(file.toString()), "this is a link or a folder, no record",
                    "rig records are plain files in their folder");
        }
        return RigRecordJson.read(Bounded.text(file, MOST_BYTES), file.toString());
    }

    private List<Path> files() throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> found = files.filter(RecordFolder::isRecord).sorted().toList();
            if (found.size() > MOST_RECORDS) {
                throw new InputException(Place.of(folder.toString()), "more than " + MOST_RECORDS + " rig records", "part the folder");
            }
            return found;
        }
    }

    /**
     * Writes a record to a file of its own; returns the file.
     *
     * @throws InputException if a record of the same data for the same key is there already
     */
    public Path add(RigRecord record) throws IOException {
        for (RigRecord other : records()) {
            if (other.dataSha256().equals(record.dataSha256()) && other.key().matches(record.key())) {
                throw new InputException(Place.of(record.source()), "these data are in the rig record already, added " + other.addedAt()
                        + " from " + other.source(), "the same pulls count once; nothing was added");
            }
        }
        String name = slug(record.key().rig()) + "-" + record.dataSha256().substring(0, HASH_DIGITS);
        Path file = folder.resolve(name + ENDING);
        for (int count = 2; Files.exists(file, LinkOption.NOFOLLOW_LINKS); count++) {
            file = folder.resolve(name + "-" + count + ENDING);
        }
        Path free = file;
        NewFolders.with(folder, () -> AtomicWrite.text(free, RigRecordJson.indented(record)));
        return free;
    }

    private static String slug(String rig) {
        String slug = rig.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return slug.isEmpty() ? "rig" : slug.substring(0, Math.min(LONGEST_NAME, slug.length()));
    }
}
