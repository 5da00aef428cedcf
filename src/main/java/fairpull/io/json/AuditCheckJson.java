package fairpull.io.json;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;

/** The questions put to a publication as JSON: figures by name, in the unit of the finding. */
final class AuditCheckJson {
    private AuditCheckJson() {
    }

    static void fill(Tree tree, AuditCheck check) {
        tree.text("code", Mapper.word(check.code())).text("state", Mapper.word(check.state()))
                .trees("found", check.found(), (one, found) -> found(one, found, check.code()));
    }

    private static void found(Tree tree, Found found, AuditCheck.Code code) {
        tree.text("about", found.about()).text("side", Mapper.word(found.side())).text("unit", found.unit().symbol());
        for (FoundFigure figure : code.figures()) {
            tree.number(figure.key(), found.told(figure));
        }
        tree.text("symbols", found.symbols());
    }
}
