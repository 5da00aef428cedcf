package fairpull.io.json;

import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.PublicationDraft;
import fairpull.domain.plan.Better;
import java.util.List;
import java.util.Optional;

/**
 * A publication that is still being typed: the fields of a publication file, of which a figure may lack what is not typed yet. The program
 * writes such a text for itself alone; what a user saves is a publication file.
 */
public final class DraftJson {
    private static final int VERSION = 1;

    private DraftJson() {
    }

    /** {@return the draft as a text} */
    public static String write(PublicationDraft draft) {
        return PublicationJson.fields(Tree.empty().whole("draftVersion", VERSION), draft).document();
    }

    /** {@return the draft in a text; {@code file} is for messages} */
    public static PublicationDraft read(String text, String file) {
        DraftFile read = JsonFiles.read(text, DraftFile.class, file, 1);
        if (read.draftVersion() != VERSION) {
            throw new IllegalArgumentException("a draft of version " + read.draftVersion());
        }
        return read.draft();
    }

    private record DraftFile(int draftVersion, String title, String remark, String source, String changed,
            List<FigureFields> figures, List<PublicationFile.CurvesFields> curves, PublicationFile.ProcedureFields procedure,
            List<PublicationFile.ClaimFields> claims) {
        PublicationDraft draft() {
            Procedure known = procedure.procedure();
            return new PublicationDraft(title, remark, source, changed, figures.stream().map(FigureFields::figure).toList(),
                    curves.stream().map(PublicationFile.CurvesFields::curves).toList(), known,
                    claims.stream().map(PublicationFile.ClaimFields::claim).toList());
        }
    }

    private record FigureFields(String name, Optional<String> before, Optional<String> after, String better, Optional<String> at,
            Optional<PublicationFile.ValuesFields> values) {
        FigureDraft figure() {
            return new FigureDraft(name, FieldText.given(before).map(FieldText::printed), FieldText.given(after).map(FieldText::printed),
                    FieldText.constant(better, Better.values(), "better"), FieldText.given(at).map(FieldText::printed),
                    FieldText.opt(values).map(PublicationFile.ValuesFields::values));
        }
    }
}
