package fairpull.ui.page.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What tells tests of one title apart: where each lies, from the folder on below which all of them do. */
final class ToldApart {
    private ToldApart() {
    }

    /** {@return where the tests lie whose title another one has as well} */
    static Map<Path, String> among(Map<Path, String> titles) {
        Map<String, List<Path>> same = new HashMap<>();
        titles.forEach((folder, title) -> same.computeIfAbsent(title, none -> new ArrayList<>()).add(folder));
        Map<Path, String> apart = new HashMap<>();
        same.values().stream().filter(folders -> folders.size() > 1).forEach(folders -> {
            int shared = folders.stream().mapToInt(folder -> shared(folder, folders.get(0))).min().orElse(0);
            folders.forEach(folder -> apart.put(folder, from(folder, shared)));
        });
        return apart;
    }

    /** How many names both begin with; the last one of a test is its own, so that a test within another has a name as well. */
    private static int shared(Path one, Path other) {
        int most = Math.min(one.getNameCount(), other.getNameCount()) - 1;
        int shared = 0;
        while (shared < most && one.getName(shared).equals(other.getName(shared))) {
            shared++;
        }
        return shared;
    }

    private static String from(Path folder, int first) {
        return folder.getNameCount() == 0 ? folder.toString() : folder.subpath(first, folder.getNameCount()).toString();
    }
}
