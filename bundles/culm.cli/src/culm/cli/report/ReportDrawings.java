package culm.cli.report;

import java.util.LinkedHashMap;
import java.util.Map;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.figures.Palette;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.reed.CrossSection;
import culm.figures.reed.LengthStack;
import culm.figures.reed.Reed;
import culm.figures.svg.SvgWriter;

/** The drawings that go with a report: the length stack, twice life size, and the cross-section where the sides close. */
final class ReportDrawings {
    private static final double ENLARGED = 2;
    private static final double SECTION_WIDTH = 360;
    private static final double SECTION_HEIGHT = 400;

    private ReportDrawings() {
    }

    /** SVG text by file name. Where the sides never close, the section is that at the staple's top. */
    static Map<String, String> of(Assessment assessment, Limits limits) {
        TextMeasure measure = ShippedFont.load();
        Reed reed = Reed.of(assessment);
        double height = assessment.sidesCloseAt().orElse(assessment.blank().number(Inputs.STAPLE_LENGTH));
        Map<String, String> all = new LinkedHashMap<>();
        all.put("length-stack.svg", SvgWriter.write(LengthStack.draw(reed, limits, ENLARGED, measure), Palette.PRINT));
        all.put("cross-section.svg", SvgWriter.write(CrossSection.draw(reed, height, SECTION_WIDTH, SECTION_HEIGHT, measure), Palette.PRINT));
        return all;
    }
}
