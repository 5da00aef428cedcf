package fairpull.io.json;

import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.PublicationDraft;
import fairpull.domain.audit.ValuesDraft;
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
        PublicationDraft draft = read.draft();
        draft.publication();
        return draft;
    }

    private record DraftFile(int draftVersion, String title, String remark, String source, String changed,
            List<FigureFields> figures, List<PublicationFile.CurvesFields> curves, PublicationFile.ProcedureFields procedure,
            List<PublicationFile.ClaimFields> claims) {
        PublicationDraft draft() {
            return new PublicationDraft(title, remark, source, changed, FieldText.each("figures", figures, FigureFields::figure),
                    FieldText.each("curves", curves, PublicationFile.CurvesFields::curves), procedure.procedure(),
                    FieldText.each("claims", claims, PublicationFile.ClaimFields::claim));
        }
    }

    private record FigureFields(String name, Optional<String> before, Optional<String> after, String better, Optional<String> at,
            Optional<PublicationFile.ValuesFields> values) {
        FigureDraft figure(FieldText.Of here) {
            return new FigureDraft(name, here.item("before", before, FieldText::printed), here.item("after", after, FieldText::printed),
                    FieldText.constant(better, Better.values(), "better"), here.item("at", at, FieldText::printed),
                    FieldText.opt(values).map(given -> given.draft(here.inner("values"))).orElse(ValuesDraft.NONE));
        }
    }
}
