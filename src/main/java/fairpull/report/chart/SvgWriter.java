package fairpull.report.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** A drawing as SVG to be put into a page. Colours are style classes of the roles; see {@link Palette#styleSheet()}. */
public final class SvgWriter {
    private SvgWriter() {
    }

    /** {@return the SVG element of a drawing; {@code id} must be unique within the page} */
    public static String svg(Drawing drawing, String id) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg viewBox=\"0 0 ").append(number(drawing.width())).append(' ')
                .append(number(drawing.height())).append("\" role=\"img\" aria-labelledby=\"").append(id).append("-t ").append(id)
                .append("-d\" class=\"chart\">\n");
        svg.append("<title id=\"").append(id).append("-t\">").append(escaped(drawing.title())).append("</title>\n");
        svg.append("<desc id=\"").append(id).append("-d\">").append(escaped(drawing.description())).append("</desc>\n");
        for (Shape shape : drawing.shapes()) {
            svg.append(shape.match(new Elements())).append('\n');
        }
        return svg.append("</svg>").toString();
    }

    /** {@return a drawing as an SVG file of its own, in the colours of a palette on the ground of a card} */
    public static String file(Drawing drawing, Palette palette) {
        String size = " width=\"" + number(drawing.width()) + "\" height=\"" + number(drawing.height()) + "\"";
        String ground = "<style>text{font-family:Inter,sans-serif}" + palette.rules() + "</style>\n<rect" + size + " fill=\""
                + palette.colour(Role.CARD) + "\"/>\n";
        String element = svg(drawing, "chart").replaceFirst("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\"" + size + " ");
        int shapes = element.indexOf("</desc>\n") + "</desc>\n".length();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element.substring(0, shapes) + ground + element.substring(shapes) + "\n";
    }

    /** One element for each kind of shape. */
    private static final class Elements implements Shape.Cases<String> {
        @Override
        public String line(Shape.Line line) {
            return "<path d=\"M" + point(line.from()) + "L" + point(line.to()) + "\"" + stroke(line.role(), line.width())
                    + dash(line.dash()) + "/>";
        }

        @Override
        public String area(Shape.Area area) {
            return rectangle(area.bounds(), area.radius()) + " class=\"f-" + area.role().token() + "\"/>";
        }

        @Override
        public String frame(Shape.Frame frame) {
            return rectangle(frame.bounds(), frame.radius()) + " fill=\"none\"" + stroke(frame.role(), frame.width()) + "/>";
        }

        @Override
        public String hatch(Shape.Hatch hatch) {
            String path = HatchLines.of(hatch).stream().map(line -> "M" + point(line.from()) + "L" + point(line.to()))
                    .collect(Collectors.joining());
            return "<path d=\"" + path + "\"" + stroke(hatch.role(), 1) + " opacity=\".35\"/>";
        }

        @Override
        public String disc(Shape.Disc disc) {
            return circle(disc.centre(), disc.radius()) + " class=\"f-" + disc.role().token() + "\"/>";
        }

        @Override
        public String ring(Shape.Ring ring) {
            return circle(ring.centre(), ring.radius()) + " class=\"f-card s-" + ring.role().token() + "\" stroke-width=\""
                    + number(ring.width()) + "\"/>";
        }

        @Override
        public String polygon(Shape.Polygon polygon) {
            return "<path d=\"M" + polygon.corners().stream().map(SvgWriter::point).collect(Collectors.joining("L")) + "Z\" class=\"f-"
                    + polygon.role().token() + "\"/>";
        }

        @Override
        public String path(Shape.Path path) {
            return "<path d=\"M" + path.points().stream().map(SvgWriter::point).collect(Collectors.joining("L"))
                    + "\" fill=\"none\" stroke-linejoin=\"round\"" + stroke(path.role(), path.width()) + dash(path.dash()) + "/>";
        }

        @Override
        public String words(Shape.Words words) {
            String anchor = switch (words.anchor()) {
                case START -> "";
                case MIDDLE -> " text-anchor=\"middle\"";
                case END -> " text-anchor=\"end\"";
            };
            return "<text x=\"" + number(words.at().x()) + "\" y=\"" + number(words.at().y()) + "\" font-size=\""
                    + number(words.type().size()) + "\"" + (words.type().bold() ? " font-weight=\"700\"" : "") + anchor + " class=\"f-"
                    + words.role().token() + "\">" + escaped(words.text()) + "</text>";
        }
    }

    private static String rectangle(Bounds bounds, double radius) {
        return "<rect x=\"" + number(bounds.x()) + "\" y=\"" + number(bounds.y()) + "\" width=\"" + number(bounds.width())
                + "\" height=\"" + number(bounds.height()) + "\"" + (radius > 0 ? " rx=\"" + number(radius) + "\"" : "");
    }

    private static String circle(Point centre, double radius) {
        return "<circle cx=\"" + number(centre.x()) + "\" cy=\"" + number(centre.y()) + "\" r=\"" + number(radius) + "\"";
    }

    private static String stroke(Role role, double width) {
        return " class=\"s-" + role.token() + "\" stroke-width=\"" + number(width) + "\"";
    }

    private static String dash(Shape.Dash dash) {
        return dash == Shape.Dash.SOLID ? "" : " stroke-dasharray=\"" + number(dash.on()) + " " + number(dash.off()) + "\"";
    }

    private static String point(Point point) {
        return number(point.x()) + " " + number(point.y());
    }

    /** A tenth of a unit is finer than any screen shows. */
    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** {@return the text with what means something in XML replaced, and what XML cannot hold left out} */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().filter(SvgWriter::isAllowed).forEach(letter -> {
            int special = List.of((int) '&', (int) '<', (int) '>', (int) '"', (int) '\'').indexOf(letter);
            if (special >= 0) {
                escaped.append(List.of("&amp;", "&lt;", "&gt;", "&quot;", "&#39;").get(special));
            } else {
                escaped.appendCodePoint(letter);
            }
        });
        return escaped.toString();
    }

    /** The characters that XML 1.0 allows, section 2.2. */
    private static boolean isAllowed(int letter) {
        return letter == '\t' || letter == '\n' || letter == '\r' || letter >= 0x20 && letter <= 0xD7FF
                || letter >= 0xE000 && letter <= 0xFFFD || letter >= 0x10000;
    }
}
