package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fairpull.domain.InputException;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.DecimalMark;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PullTableReaderTest {
    private static final String PLAIN = "install,part,pull,minutes,iat_c,value\n1,A,1,0,26,412.125\n1,A,2,4.5,26.5,414.25\n2,B,1,40,27,415.5\n";

    @TempDir
    private Path folder;

    @Test
    void aPlainTable() throws IOException {
        PullTable table = read(PLAIN, new TableOptions(List.of("IAT_C"), Drift.LINEAR, "hp"));

        assertThat(table.unit()).isEqualTo("hp");
        assertThat(table.covariateNames()).containsExactly("IAT_C");
        assertThat(table.rows()).containsExactly(
                new PullRow("1", "1", Part.A, "1", 0, 412.125, List.of(26.0)),
                new PullRow("1", "1", Part.A, "2", 4.5, 414.25, List.of(26.5)),
                new PullRow("1", "2", Part.B, "1", 40, 415.5, List.of(27.0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Install;Part;Pull;Value\nA1;a;1;412,125\nB1;b;1;415,5\n",
        "value\tpull\tpart\tinstall\r\n412.125\t1\tA\tA1\r\n\r\n415.5\t1\tB\tB1\r\n",
        "\"install\",\"part\",\"pull\",\"value\",\"note\"\r\"A1\",\"A\",\"1\",\"412,125\",\"\"\n\"B1\",\"B\",\"1\",\"415,5\",\"wet\"",
        "\ufeffinstall,part,pull,value,\nA1 , A,1,412.125,\nB1,B,1,415.5,\n"})
    void theSameTableInOtherDialects(String text) throws IOException {
        assertThat(read(text, TableOptions.plain()).rows()).containsExactly(
                new PullRow("1", "A1", Part.A, "1", Double.NaN, 412.125, List.of()),
                new PullRow("1", "B1", Part.B, "1", Double.NaN, 415.5, List.of()));
    }

    @Test
    void latinOneAndSixteenBits() throws IOException {
        String text = "install,part,pull,value,Öl\nfrüh,A,1,1.5,x\nspät,B,1,2.5,\n";
        for (Charset charset : List.of(Charset.forName("windows-1252"), StandardCharsets.UTF_8, StandardCharsets.UTF_16)) {
            Path file = Files.write(folder.resolve("t.csv"), text.getBytes(charset));
            assertThat(PullTableReader.read(file, TableOptions.plain()).rows()).extracting(PullRow::install).containsExactly("früh", "spät");
        }
    }

    @Test
    void sessionsAndBlocks() throws IOException {
        for (String name : List.of("session", "Block")) {
            String text = "install,part,pull,value," + name + "\n1,A,1,1.5,d1\n2,B,1,2.5,d1\n3,A,1,1.25,d2\n";
            assertThat(read(text, TableOptions.plain()).rows()).extracting(PullRow::session).containsExactly("d1", "d1", "d2");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        "install,part,value;1,A,1.5;2,B,2.5|line 1, column pull: there is no such column; the first line must name",
        "install,part,pull,value;1,A,1,1.5;2,C,1,2.5|line 3, column part: there is no part “C”; a part is A",
        "install,part,pull,value;1,A,1,1.5;1,A,2,2.5|there is only one install; a comparison needs",
        "install,part,pull,value;1,A,1,1.5;2,A,1,2.5|every pull is of part A; a comparison needs",
        "install,part,pull,value;1,A,1,1.5;2,B,1,1.5|all values are equal: 1.5; ",
        "install,part,pull,value;1,A,1,1.5;2,B,1,NaN|line 3, column value: “NaN” is not a number; ",
        "install,part,pull,value;1,A,1,1.5;2,B,1,inf|line 3, column value: “inf” is not a number; ",
        "install,part,pull,value;1,A,1,1.5;2,B,1,1e999|line 3, column value: “1e999” is not a number; ",
        "install,part,pull,value;1,A,1,1.5;2,B,1,fast|line 3, column value: “fast” is not a number; ",
        "install,part,pull,value;1,A,1,1.5;2,B,1,|line 3, column value: the cell is blank; ",
        "install,part,pull,value;1,A,1,1.5;,B,1,2.5|line 3, column install: the cell is blank; ",
        "install,part,pull,value;1,A,1,1.5;1,A,1,1.6;2,B,1,2.5|line 3, column pull: pull 1 of install 1 stands in line 2 already; ",
        "install,part,pull,value;1,A,1,1.5;1,B,2,2.5|line 3, column part: install 1 is part A in line 2 and part B here; ",
        "install,part,pull,value,session;1,A,1,1.5,x;1,A,2,2.5,y;2,B,1,2.6,y|line 3, column session: install 1 is in session x",
        "install,part,pull,value,Value;1,A,1,1.5,2|line 1, column value: two columns have this name; rename",
        "install,part,pull,value;1,A,1,1.5,7;2,B,1,2.5|line 2: the line has 5 cells and the header 4; ",
        "install,part,pull,value|line 1: there is a header but no pull below it; "})
    void tablesThatCannotBeJudged(String lines, String message) throws IOException {
        assertThat(refusal(lines.replace(';', '\n'), TableOptions.plain()).oneLine())
                .startsWith(folder.resolve("t.csv").toString())
                .contains(message)
                .doesNotContain("\n");
    }

    @Test
    void driftNeedsMinutes() throws IOException {
        TableOptions drift = new TableOptions(List.of(), Drift.QUADRATIC, "");

        assertThat(refusal("install,part,pull,value\n1,A,1,1.5\n2,B,1,2.5\n", drift).oneLine()).contains("line 1, column minutes: there is no",
                "a drift needs the column minutes");
        assertThat(refusal("install,part,pull,value,minutes\n1,A,1,1.5,\n2,B,1,2.5,4\n", drift).oneLine())
                .contains("line 2, column minutes: the cell is blank");
        assertThat(read("install,part,pull,value,minutes\n1,A,1,1.5,?\n2,B,1,2.5,4\n", TableOptions.plain()).hasMinutes()).isFalse();
    }

    @Test
    void onlyCovariatesAskedForMustBeNumbers() throws IOException {
        String text = "install,part,pull,value,oil,wind\n1,A,1,1.5,80,calm\n2,B,1,2.5,81.5,gusts\n";

        assertThat(read(text, new TableOptions(List.of("oil"), Drift.NONE, "")).rows().get(1).covariates()).containsExactly(81.5);
        assertThat(refusal(text, new TableOptions(List.of("wind"), Drift.NONE, "")).oneLine()).contains("line 2, column wind: “calm”");
        assertThat(refusal(text, new TableOptions(List.of("iat"), Drift.NONE, "")).oneLine())
                .contains("line 1, column iat: there is no such column; the columns are install, part, pull, value, oil, wind");
    }

    @ParameterizedTest
    @ValueSource(strings = {"install", "part", "pull", "value", "VALUE", "session", "minutes"})
    void whatIsInTheModelAlreadyIsNotACovariate(String name) throws IOException {
        String text = "install,part,pull,value,minutes,session,oil\n1,A,1,1.5,0,1,80\n2,B,1,2.5,5,1,81.5\n";

        assertThat(refusal(text, new TableOptions(List.of(name), Drift.NONE, "")).oneLine())
                .contains("line 1, column " + name.toLowerCase(Locale.ROOT) + ": the column " + name.toLowerCase(Locale.ROOT)
                        + " is not a covariate; ", name.equals("minutes") ? "--drift linear" : "other columns are oil");
    }

    @ParameterizedTest
    @CsvSource({"value,2.5", "minutes,4.5", "oil,81.5"})
    void numbersWhoseSquaresOverflowAreRefused(String column, String replaced) throws IOException {
        String text = "install,part,pull,minutes,oil,value\n1,A,1,0,80,1.5\n2,B,1,4.5,81.5,2.5\n";
        TableOptions options = new TableOptions(List.of("oil"), Drift.QUADRATIC, "");

        for (String extreme : List.of("1e155", "-1e61", "1e308", "1e-61", "-1e-200")) {
            assertThat(refusal(text.replace(replaced, extreme), options).oneLine())
                    .contains("line 3, column " + column + ": “" + extreme + "” is out of range: ", "; correct the cell, or write the column in");
        }
        for (String usable : List.of("1e60", "-1e60", "1e-60", "0", "-0.0")) {
            assertThat(read(text.replace(replaced, usable), options).rows()).hasSize(2);
        }
    }

    @Test
    void oneThousandOrOnePointTwoIsAsked() throws IOException {
        String text = "install;part;pull;value\n1;A;1;1,234\n2;B;1;1,245\n";

        assertThat(refusal(text, TableOptions.plain()).oneLine())
                .contains("line 2: “1,234” can be read with either decimal mark; say which one it is: --decimal point or --decimal comma");
        TableOptions comma = new TableOptions(List.of(), Drift.NONE, "", Optional.of(DecimalMark.COMMA));
        TableOptions point = new TableOptions(List.of(), Drift.NONE, "", Optional.of(DecimalMark.POINT));
        assertThat(read(text, comma).rows().get(0).value()).isEqualTo(1.234);
        assertThat(read(text, point).rows().get(0).value()).isEqualTo(1234);
        assertThat(read(text.replace("1,245", "1,2"), TableOptions.plain()).rows().get(0).value()).isEqualTo(1.234);
    }

    private PullTable read(String text, TableOptions options) throws IOException {
        return PullTableReader.read(Files.writeString(folder.resolve("t.csv"), text), options);
    }

    private InputException refusal(String text, TableOptions options) throws IOException {
        Path file = Files.writeString(folder.resolve("t.csv"), text);
        InputException refusal = catchThrowableOfType(InputException.class, () -> PullTableReader.read(file, options));
        assertThat(refusal).as(text).isNotNull();
        return refusal;
    }
}
