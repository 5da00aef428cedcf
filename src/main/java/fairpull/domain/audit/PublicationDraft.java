package fairpull.domain.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A published comparison while it is typed: what is not known yet is empty.
 *
 * @param title what it is called here
 * @param remark what a reader should know first
 * @param source where it was published
 * @param changed what was changed
 * @param figures in the order in which they stand
 * @param curves that were published over engine speed
 * @param procedure how they came about
 * @param claims what is claimed of them, in the order in which they stand
 */
public record PublicationDraft(String title, String remark, String source, String changed, List<FigureDraft> figures,
        List<Publication.Curves> curves, Procedure procedure, List<Publication.Claim> claims) {
    /** @throws IllegalArgumentException if two figures have one name */
    public PublicationDraft {
        Objects.requireNonNull(procedure, "procedure");
        figures = List.copyOf(figures);
        curves = List.copyOf(curves);
        claims = List.copyOf(claims);
        if (figures.stream().map(FigureDraft::name).distinct().count() < figures.size()) {
            throw new IllegalArgumentException("another figure has that name already; claims would not know which one they are about");
        }
    }

    /** {@return a publication of which nothing is known but that it has a figure and a claim} */
    public static PublicationDraft blank() {
        return new PublicationDraft("", "", "", "", List.of(), List.of(), Procedure.notDisclosed(), List.of()).withAnotherFigure()
                .withAnotherClaim();
    }

    /** {@return a publication as a draft} */
    public static PublicationDraft of(Publication publication) {
        return new PublicationDraft(publication.title(), publication.remark(), publication.source(), publication.changed(),
                publication.figures().stream().map(FigureDraft::of).toList(), publication.curves(), publication.procedure(),
                publication.claims());
    }

    /**
     * {@return the publication so far, with the claims whose words are there; empty while it holds no figure before and after}
     *
     * @throws IllegalArgumentException if there is no such publication, in words for people
     */
    public Optional<Publication> publication() {
        List<Publication.Figure> known = figures.stream().flatMap(figure -> figure.figure().stream()).toList();
        List<String> names = known.stream().map(Publication.Figure::name).toList();
        List<Publication.Claim> about = claims.stream()
                .filter(claim -> !claim.words().isBlank() && names.contains(claim.figure())).toList();
        return known.isEmpty() ? Optional.empty()
                : Optional.of(new Publication(title, remark, source, changed, known, curves, procedure, about));
    }

    /** {@return the same under another title} */
    public PublicationDraft titled(String other) {
        return new PublicationDraft(other, remark, source, changed, figures, curves, procedure, claims);
    }

    /** {@return the same with another remark} */
    public PublicationDraft remarked(String other) {
        return new PublicationDraft(title, other, source, changed, figures, curves, procedure, claims);
    }

    /** {@return the same from elsewhere} */
    public PublicationDraft from(String other) {
        return new PublicationDraft(title, remark, other, changed, figures, curves, procedure, claims);
    }

    /** {@return the same of something else that was changed} */
    public PublicationDraft changing(String other) {
        return new PublicationDraft(title, remark, source, other, figures, curves, procedure, claims);
    }

    /** {@return the same with another procedure} */
    public PublicationDraft with(Procedure other) {
        return new PublicationDraft(title, remark, source, changed, figures, curves, other, claims);
    }

    private PublicationDraft with(List<FigureDraft> otherFigures, List<Publication.Claim> otherClaims) {
        return new PublicationDraft(title, remark, source, changed, otherFigures, curves, procedure, otherClaims);
    }

    /** {@return the same with other curves} */
    public PublicationDraft withCurves(List<Publication.Curves> others) {
        return new PublicationDraft(title, remark, source, changed, figures, others, procedure, claims);
    }

    /** {@return the same with one more figure, which has a name of its own} */
    public PublicationDraft withAnotherFigure() {
        List<String> names = figures.stream().map(FigureDraft::name).toList();
        String name = Stream.iterate(figures.size() + 1, number -> number + 1).map(number -> "figure " + number)
                .filter(free -> !names.contains(free)).findFirst().orElseThrow();
        return with(plus(figures, FigureDraft.named(name)), claims);
    }

    /** {@return the same with another figure at a place; claims about the one that stood there are about it now} */
    public PublicationDraft withFigure(int place, FigureDraft figure) {
        String old = figures.get(place).name();
        return with(replaced(figures, place, figure), claims.stream().map(claim -> claim.figure().equals(old)
                ? new Publication.Claim(claim.words(), figure.name(), claim.gain()) : claim).toList());
    }

    /** {@return the same without the figure at a place, nor the claims about it} */
    public PublicationDraft withoutFigure(int place) {
        String gone = figures.get(place).name();
        return with(without(figures, place), claims.stream().filter(claim -> !claim.figure().equals(gone)).toList());
    }

    /** {@return the same with one more claim, about the first figure} */
    public PublicationDraft withAnotherClaim() {
        String about = figures.isEmpty() ? "" : figures.get(0).name();
        return with(figures, plus(claims, new Publication.Claim("", about, Optional.<Printed>empty())));
    }

    /** {@return the same with another claim at a place} */
    public PublicationDraft withClaim(int place, Publication.Claim claim) {
        return with(figures, replaced(claims, place, claim));
    }

    /** {@return the same without the claim at a place} */
    public PublicationDraft withoutClaim(int place) {
        return with(figures, without(claims, place));
    }

    private static <T> List<T> plus(List<T> list, T more) {
        return Stream.concat(list.stream(), Stream.of(more)).toList();
    }

    private static <T> List<T> replaced(List<T> list, int place, T by) {
        List<T> changed = new ArrayList<>(list);
        changed.set(place, by);
        return changed;
    }

    private static <T> List<T> without(List<T> list, int place) {
        List<T> changed = new ArrayList<>(list);
        changed.remove(place);
        return changed;
    }
}
