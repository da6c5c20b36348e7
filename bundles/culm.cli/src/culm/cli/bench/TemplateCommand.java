package culm.cli.bench;

import java.util.List;

import culm.bench.template.Template;
import culm.bench.template.TemplateDxf;
import culm.bench.template.TemplateSheet;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.paper.Paper;
import culm.figures.svg.SvgWriter;
import culm.geometry.GeometryException;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm template}: the outline of the cane as cut, 1:1. */
public final class TemplateCommand implements Command {
    private final Profiles profiles;

    public TemplateCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "template";
    }

    @Override
    public String arguments() {
        return "DESIGN [--paper a4|letter] [--out DIR]";
    }

    @Override
    public String summary() {
        return "writes the outline of the cane as cut, flat and folded, 1:1, and a width gauge";
    }

    @Override
    public String help() {
        return """

                  DESIGN         a design, ending in .reed
                  --paper WHICH  a4 (that is assumed) or letter
                  --out DIR      where template.pdf, template.svg and template.dxf go; this folder if it is not given

                The DXF is R12, 1 drawing unit is 1 mm; layers FLAT (widths along the bark), FOLDED (straight across), FOLD, TEXT.
                Ends with 0: written, 1: this cane cannot be cut, 2: wrong usage, 3: unreadable input.
                """;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of(), List.of("--paper", "--out"));
        Files files = new Files(new Bridge(profiles), terminal);
        DesignedBlank design = files.design(arguments.only("a design's file"));
        Paper paper = Options.paper(arguments);
        String folder = arguments.value("--out").orElse(".");
        try {
            Template template = Template.of(design.blank());
            Drawing sheet = TemplateSheet.draw(template, design.name() + ": template", paper);
            files.pdf(folder, "template.pdf", List.of(sheet));
            files.write(folder, "template.svg", SvgWriter.write(sheet, Palette.PRINT));
            files.write(folder, "template.dxf", TemplateDxf.write(template, design.name()));
            return ExitCode.FINE;
        } catch (GeometryException refused) {
            terminal.err().println("It cannot be cut: " + refused.getMessage());
            return ExitCode.WILL_NOT_WORK;
        }
    }
}
