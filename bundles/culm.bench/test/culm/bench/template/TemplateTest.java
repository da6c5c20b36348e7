package culm.bench.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import culm.bench.Blanks;
import culm.bench.PdfLines;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Palette;
import culm.figures.paper.Paper;
import culm.figures.pdf.PdfWriter;
import culm.geometry.GeometryException;
import culm.geometry.section.Point;

class TemplateTest {
    private static Blank blank() {
        return Blanks.check().edit().set(Inputs.EARS_WIDTH, 0.8).set(Inputs.EARS_LENGTH, 3).build();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void theOutlinesMeasureOnPaperWhatTheCaneMeasures(Paper paper) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(List.of(TemplateSheet.draw(Template.of(blank()), "Harbour Row, trial 14", paper)), Palette.PRINT, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            PdfLines lines = PdfLines.of(document.getPage(0));
            List<double[]> flat = widest(lines, 74);
            List<double[]> folded = widest(lines, 37);
            double fold = flat.stream().mapToDouble(p -> p[0]).average().orElseThrow();
            double start = folded.stream().mapToDouble(p -> p[0]).min().orElseThrow();
            assertEquals(74, span(flat, 0), 0.02);
            assertEquals(37, span(folded, 0), 0.02);
            assertEquals(4.83, widthAt(folded, start + 26), 0.02);
            assertEquals(4.35, widthAt(folded, start + 37 - 1e-4), 0.02);
            assertEquals(7.0 + 2 * 0.8, widthAt(folded, start + 0.01), 0.02);
            double onBark = 2 * 5.25 * Math.asin(4.83 / 2 / 5.25);
            double middle = (flat.stream().mapToDouble(p -> p[0]).min().orElseThrow() + flat.stream().mapToDouble(p -> p[0]).max().orElseThrow()) / 2;
            assertEquals(onBark, widthAt(flat, middle + 26), 0.02);
            assertEquals(onBark, widthAt(flat, middle - 26), 0.02);
            assertTrue(Double.isFinite(fold));
            assertEquals(1, lines.horizontal().stream().filter(l -> Math.abs(l[2] - l[0] - 100) < 0.05).count());
        }
    }

    private static List<double[]> widest(PdfLines lines, double length) {
        return lines.polygons().stream().filter(p -> Math.abs(span(p, 0) - length) < 0.5).findFirst().orElseThrow();
    }

    private static double span(List<double[]> polygon, int axis) {
        return polygon.stream().mapToDouble(p -> p[axis]).max().orElseThrow() - polygon.stream().mapToDouble(p -> p[axis]).min().orElseThrow();
    }

    /** Height of a polygon along a vertical line. */
    private static double widthAt(List<double[]> polygon, double x) {
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < polygon.size(); i++) {
            double[] a = polygon.get(i);
            double[] b = polygon.get((i + 1) % polygon.size());
            if (a[0] <= x != b[0] <= x) {
                cuts.add(a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0]));
            }
        }
        return cuts.stream().mapToDouble(Double::doubleValue).max().orElseThrow() - cuts.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    }

    @Test
    void theGaugeRunsApartAsItsNumbersSay() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(List.of(TemplateSheet.draw(Template.of(blank()), "t", Paper.A4)), Palette.PRINT, out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            List<double[]> slanted = PdfLines.of(document.getPage(0)).slanted();
            assertEquals(2, slanted.size());
            double[] first = slanted.get(0);
            double[] second = slanted.get(1);
            assertEquals(4.0, Math.abs(first[1] - second[1]), 0.02);
            assertEquals(7.0, Math.abs(first[3] - second[3]), 0.02);
            assertEquals(30 * 4, first[2] - first[0], 0.02);
        }
    }

    /** A reader of group codes that knows nothing of the writer. */
    private record Code(int code, String value) {
        static List<Code> read(String file) {
            String[] lines = file.split("\r\n", -1);
            return IntStream.range(0, lines.length / 2).mapToObj(i -> new Code(Integer.parseInt(lines[2 * i].strip()), lines[2 * i + 1])).toList();
        }
    }

    @Test
    void theDxfReadsBackAsTheOutline() {
        Template template = Template.of(blank());
        String file = TemplateDxf.write(template, "Harbour Row, na\u00efve");
        assertTrue(file.chars().allMatch(c -> c < 128));
        List<Code> codes = Code.read(file);
        assertEquals(new Code(0, "EOF"), codes.get(codes.size() - 1));
        assertTrue(codes.contains(new Code(1, "AC1009")));
        List<List<Point>> polygons = new ArrayList<>();
        String entity = "";
        String layer = "";
        double x = 0;
        List<String> layers = new ArrayList<>();
        for (Code c : codes) {
            if (c.code() == 0) {
                entity = c.value();
                if (entity.equals("POLYLINE")) {
                    polygons.add(new ArrayList<>());
                }
            } else if (c.code() == 8) {
                layer = c.value();
                if (entity.equals("POLYLINE")) {
                    layers.add(layer);
                }
            } else if (entity.equals("VERTEX") && c.code() == 10) {
                x = Double.parseDouble(c.value());
            } else if (entity.equals("VERTEX") && c.code() == 20) {
                polygons.get(polygons.size() - 1).add(new Point(x, Double.parseDouble(c.value())));
            }
        }
        assertEquals(List.of("FLAT", "FOLDED"), layers);
        assertEquals(template.flat().size(), polygons.get(0).size());
        for (int i = 0; i < template.flat().size(); i++) {
            assertEquals(template.flat().get(i).x(), polygons.get(0).get(i).x(), 5.1e-5);
            assertEquals(template.flat().get(i).y(), polygons.get(0).get(i).y(), 5.1e-5);
        }
        assertEquals(template.folded().size(), polygons.get(1).size());
    }

    @Test
    void caneWiderThanItsTubeIsRefused() {
        Blank wide = Blanks.check().with("shape.places[0].width", 10.6);
        assertThrows(GeometryException.class, () -> Template.of(wide));
    }
}
