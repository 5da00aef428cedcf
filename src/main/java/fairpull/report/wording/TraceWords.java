package fairpull.report.wording;

import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LineEnd;
import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.PixelPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What following a line gave, in sentences. */
public final class TraceWords {
    /** In a JPEG the colours of thinner lines are mostly those of what is beside them. */
    private static final double THIN_PX = 2;

    private TraceWords() {
    }

    /**
     * Sentences about a line that was followed.
     *
     * @param place how a place in the picture is called
     * @param lossy whether the picture is a JPEG
     */
    public static List<String> followed(FollowedLine line, Function<PixelPoint, String> place, boolean lossy) {
        List<String> sentences = new ArrayList<>();
        sentences.add("Followed from " + place.apply(line.left().at()) + " to " + place.apply(line.right().at()) + "; the line is "
                + Numbers.given(Math.round(line.widthPx() * 10) / 10.0) + " pixels wide.");
        for (LineEnd end : List.of(line.left(), line.right())) {
            if (end.isDoubtful()) {
                sentences.add(end(end, place));
            }
        }
        gaps(line.gaps()).ifPresent(sentences::add);
        if (lossy && line.widthPx() < THIN_PX) {
            sentences.add("In a JPEG the colours of lines thinner than 2 pixels run into each other: look whether the points stay on the "
                    + "line where lines cross or come close.");
        }
        return sentences;
    }

    private static String end(LineEnd end, Function<PixelPoint, String> place) {
        String at = "It ends at " + place.apply(end.at()) + ": ";
        String next = "; click the line beyond that place to go on, or set the points between by hand.";
        return at + switch (end.reason()) {
            case MEETS_SAME_COLOUR -> "something of the same colour meets the line there, and which is which cannot be told" + next;
            case SEVERAL_AHEAD -> "several lines of the colour lie ahead, and which one goes on cannot be told" + next;
            case LOST_UNDER_ANOTHER -> "something of another colour covers it there, and it does not come out where it led" + next;
            case NO_LINE_AHEAD -> "what lies ahead is no line" + next;
            case NO_MORE_LINE -> "no more of the colour lies ahead.";
            case EDGE_OF_PICTURE -> "the picture ends.";
        };
    }

    private static Optional<String> gaps(List<LineGap> gaps) {
        if (gaps.isEmpty()) {
            return Optional.empty();
        }
        double longest = gaps.stream().mapToDouble(gap -> gap.toPx() - gap.fromPx()).max().orElse(0);
        long covered = gaps.stream().filter(gap -> gap.reason() == LineGap.Reason.COVERED).count();
        return Optional.of("Bridged in " + gaps.size() + (gaps.size() == 1 ? " place" : " places") + ", the longest "
                + Math.round(longest) + " pixels" + (covered > 0 ? "; where another line covers it, in " + covered : "")
                + ". Points there are marked as bridged.");
    }
}
