package fairpull.io.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The answers are what the systems' own tools are documented to print; from memory. */
class SystemThemeTest {
    @Test
    void theRegistrySaysZeroForDark() {
        String line = "\r\nHKEY_CURRENT_USER\\Software\r\n    AppsUseLightTheme    REG_DWORD    0x%s\r\n\r\n";
        assertThat(SystemTheme.ofRegistry(String.format(line, "0"))).contains(true);
        assertThat(SystemTheme.ofRegistry(String.format(line, "1"))).contains(false);
        assertThat(SystemTheme.ofRegistry("ERROR: not found")).isEmpty();
    }

    @Test
    void theDesktopNamesItsScheme() {
        assertThat(SystemTheme.saysDark("'prefer-dark'\n")).isTrue();
        assertThat(SystemTheme.saysDark("'default'\n")).isFalse();
        assertThat(SystemTheme.saysDark("Dark\n")).isTrue();
    }
}
