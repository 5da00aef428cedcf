package fairpull.ui.page.tracing;

import fairpull.domain.plan.Part;

/** What a click in the picture does. */
enum Tool {
    /** Sets the first point of the x axis, and so on. */
    X_FIRST(0, true), X_SECOND(1, true), Y_FIRST(0, false), Y_SECOND(1, false),
    /** Follows the line that is clicked, as the curve of a part. */
    FOLLOW_A(Part.A), FOLLOW_B(Part.B),
    /** Sets a point of the curve of a part, or takes hold of one. */
    POINTS_A(Part.A), POINTS_B(Part.B);

    private final int point;
    private final boolean across;
    private final Part part;

    Tool(int point, boolean across) {
        this.point = point;
        this.across = across;
        this.part = null;
    }

    Tool(Part part) {
        this.point = -1;
        this.across = false;
        this.part = part;
    }

    static Tool follow(Part part) {
        return part == Part.A ? FOLLOW_A : FOLLOW_B;
    }

    static Tool points(Part part) {
        return part == Part.A ? POINTS_A : POINTS_B;
    }

    static Tool axis(boolean across, int point) {
        return across ? point == 0 ? X_FIRST : X_SECOND : point == 0 ? Y_FIRST : Y_SECOND;
    }

    boolean isAxis() {
        return point >= 0;
    }

    boolean isFollow() {
        return this == FOLLOW_A || this == FOLLOW_B;
    }

    boolean isPoints() {
        return this == POINTS_A || this == POINTS_B;
    }

    /** {@return which point of its axis, 0 or 1} */
    int point() {
        return point;
    }

    boolean isAcross() {
        return across;
    }

    /** {@return whose curve it works on} */
    Part part() {
        if (part == null) {
            throw new IllegalStateException(this + " works on an axis");
        }
        return part;
    }

    /** {@return the key of its words} */
    String key() {
        return switch (this) {
            case X_FIRST -> "tracing.x.first";
            case X_SECOND -> "tracing.x.second";
            case Y_FIRST -> "tracing.y.first";
            case Y_SECOND -> "tracing.y.second";
            case FOLLOW_A, FOLLOW_B -> "tracing.follow";
            case POINTS_A, POINTS_B -> "tracing.points";
        };
    }
}
