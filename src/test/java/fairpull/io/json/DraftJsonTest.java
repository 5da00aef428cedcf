package fairpull.io.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.domain.InputException;
import fairpull.domain.audit.PublicationDraft;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftJsonTest {
    @ParameterizedTest
    @ValueSource(strings = {"silent", "sound", "inlet", "battery-trial-1953"})
    void aDraftOfAPublicationIsReadAsItWasWritten(String name) throws IOException {
        String text = Files.readString(Path.of("demo-data/published/" + name + ".json"));
        PublicationDraft draft = PublicationDraft.of(PublicationJson.read(text, name));
        assertThat(DraftJson.read(DraftJson.write(draft), name)).isEqualTo(draft);
    }

    @Test
    void whatIsNotTypedYetStaysEmpty() {
        PublicationDraft blank = PublicationDraft.blank().withAnotherFigure().titled("half of it");
        assertThat(DraftJson.read(DraftJson.write(blank), "blank")).isEqualTo(blank);
    }

    @Test
    void aDraftIsNoPublicationFile() {
        assertThatThrownBy(() -> PublicationJson.read(DraftJson.write(PublicationDraft.blank()), "draft"))
                .isInstanceOf(InputException.class).hasMessageContaining("not a publication");
    }
}
