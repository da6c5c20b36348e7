package culm.figures;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.BarChart;
import culm.figures.chart.Chart;
import culm.figures.chart.Histogram;
import culm.figures.chart.Series;
import culm.figures.chart.Span;
import culm.figures.font.ShippedFont;
import culm.figures.parts.BoreArea;
import culm.figures.parts.GougeThickness;
import culm.figures.parts.ShapeOutline;
import culm.figures.pdf.PdfWriter;
import culm.figures.png.PngWriter;
import culm.figures.reed.CrossSection;
import culm.figures.reed.LengthStack;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedOptions;
import culm.figures.reed.ReedView;
import culm.figures.svg.SvgWriter;

/** Writes every figure in every format to a folder, to be looked at. */
public final class Gallery {
    private static final TextMeasure FONT = ShippedFont.load();

    private Gallery() {
    }

    public static Map<String, Drawing> all() {
        Map<String, Drawing> all = new TreeMap<>();
        Map<String, Blank> blanks = new TreeMap<>(Map.of("example", Blanks.example(), "open", Blanks.open(), "nocork", Blanks.noCork(),
                "overwrapped", Blanks.example().with(Inputs.WRAP_TOP, 48.3), "crooked", Blanks.example().with(Inputs.CROOKED, 0.2),
                "low", Blanks.example().with(Inputs.TIE_LENGTH, 69.4), "broken", Blanks.example().with(Inputs.TUBE, 6.9),
                "ears", Blanks.example().edit().set(Inputs.EARS_WIDTH, 0.8).set(Inputs.EARS_LENGTH, 4).build()));
        blanks.forEach((name, blank) -> {
            Reed reed = Reed.of(Blanks.assessed(blank));
            all.put("reed-" + name, ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 760), FONT, ReedOptions.WINDOW).drawing());
        });
        Reed reed = Reed.of(Blanks.assessed(Blanks.example()));
        all.put("reed-narrow", ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 320), FONT, ReedOptions.WINDOW).drawing());
        all.put("reed-wide", ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 1500), FONT, ReedOptions.WINDOW).drawing());
        all.put("reed-zoomed", ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, 760).zoomed(46, 6), FONT, ReedOptions.WINDOW).drawing());
        for (double z : new double[] {10, 30, 36, 44, 46, 46.8, 55, 65, 71.9}) {
            all.put("section-" + z, CrossSection.draw(reed, z, 230, 260, FONT));
        }
        Reed crooked = Reed.of(Blanks.assessed(Blanks.example().edit().set(Inputs.CROOKED, 0.4).set(Inputs.SLIPPED, 0.6).build()));
        all.put("section-crooked", CrossSection.draw(crooked, 44, 230, 260, FONT));
        Reed radial = Reed.of(Blanks.assessed(Blanks.open()));
        all.put("section-radial", CrossSection.draw(radial, 44, 230, 260, FONT));
        Reed pinched = Reed.of(Blanks.assessed(Blanks.example().with(Inputs.TIE_LENGTH, 69.4)));
        all.put("section-pinched", CrossSection.draw(pinched, 46.9, 230, 260, FONT));
        all.put("stack", LengthStack.draw(reed, Limits.STANDARD, 2, FONT));
        all.put("stack-open", LengthStack.draw(radial, Limits.STANDARD, 1, FONT));
        all.put("part-shape", ShapeOutline.draw(Blanks.example().edit().set(Inputs.EARS_WIDTH, 0.8).set(Inputs.EARS_LENGTH, 4).build(), 560, FONT));
        all.put("part-gouge", GougeThickness.draw(Blanks.example(), 420, 380, FONT).drawing());
        all.put("part-bore", BoreArea.draw(Blanks.example(), 420, 260, FONT).drawing());
        charts(all);
        return all;
    }

    private static void charts(Map<String, Drawing> all) {
        SplittableRandom random = new SplittableRandom(7);
        double[] values = new double[2000];
        for (int i = 0; i < values.length; i++) {
            values[i] = 1.1 + 0.45 * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5);
        }
        values[5] = Double.NaN;
        all.put("chart-histogram", new Histogram("Turns left in 2000 runs", new AxisLabel("turns left", ""), values, List.of(new Histogram.Mark(0.6, "5 % below"), new Histogram.Mark(1.1, "middle"), new Histogram.Mark(1.6, "5 % above")),
                new Span(0, 2, "my limits", Role.FITS)).draw(420, 260, FONT).drawing());
        List<double[]> a = new ArrayList<>();
        List<double[]> b = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            a.add(new double[] {70 + i * 0.2, 3.2 - i * 0.21 + 0.1 * random.nextDouble()});
            b.add(new double[] {70 + i * 0.2, i == 7 ? Double.NaN : 2.6 - i * 0.2});
        }
        all.put("chart-xy", new Chart("Turns left over tie length", new AxisLabel("tie length", "mm"), new AxisLabel("turns left", ""),
                List.of(Series.points("as tied", a, Series.Marker.DOT, Role.THREAD), Series.line("planned", b, Role.BARK),
                        new Series("last term", b, true, Series.Marker.TRIANGLE, Role.DOES_NOT, Dash.DASHED)),
                List.of(new Span(71, 72.5, "my limits", Role.FITS)), true).draw(420, 280, FONT).drawing());
        all.put("chart-bars", new BarChart("What moves the closing", "mm", 2, List.of(new BarChart.Bar("swelling of width", -0.82, Role.BARK),
                new BarChart.Bar("thickness lost under the thread", 0.61, Role.BARK), new BarChart.Bar("tie length", 0.12, Role.BARK),
                new BarChart.Bar("staple, top wide", 0.09, Role.BARK), new BarChart.Bar("gouge, middle", Double.NaN, Role.BARK))).draw(420, FONT).drawing());
    }

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (Map.Entry<String, Drawing> figure : all().entrySet()) {
            if (args.length > 1 && !figure.getKey().matches(args[1])) {
                continue;
            }
            Files.writeString(folder.resolve(figure.getKey() + ".svg"), SvgWriter.write(figure.getValue(), Palette.LIGHT));
            try (OutputStream out = Files.newOutputStream(folder.resolve(figure.getKey() + ".png"))) {
                PngWriter.write(figure.getValue(), Palette.LIGHT, 144, out);
            }
            try (OutputStream out = Files.newOutputStream(folder.resolve(figure.getKey() + "-dark.png"))) {
                PngWriter.write(figure.getValue(), Palette.DARK, 96, out);
            }
            try (OutputStream out = Files.newOutputStream(folder.resolve(figure.getKey() + ".pdf"))) {
                PdfWriter.write(List.of(figure.getValue()), Palette.PRINT, out);
            }
        }
    }
}
