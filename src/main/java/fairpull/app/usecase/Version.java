package fairpull.app.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of the program, as the build wrote it. */
public final class Version {
    private Version() {
    }

    /** {@return the version, such as 0.1.0} */
    public static String text() {
        try (InputStream in = Version.class.getResourceAsStream("/fairpull/version.properties")) {
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
