package culm.cli.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import culm.bench.batch.BatchCsv;
import culm.bench.batch.BatchPlan;
import culm.bench.card.Card;
import culm.bench.card.CardHead;
import culm.bench.card.CardPage;
import culm.bench.card.Cards;
import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.paper.Paper;
import culm.figures.svg.SvgWriter;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm card}: bench cards as PDF and SVG. */
public final class CardCommand implements Command {
    private static final List<String> WHAT = List.of("--for", "--instrument", "--number", "--staple", "--cane", "--shape", "--thread", "--ends");
    private final Profiles profiles;
    private final Rules rules;

    public CardCommand(Profiles profiles, Rules rules) {
        this.profiles = profiles;
        this.rules = rules;
    }

    @Override
    public String name() {
        return "card";
    }

    @Override
    public String arguments() {
        return "DESIGN [--batch STAPLES] [--each staple|setting|class] [--paper a4|letter] [--for NAME] [--number NO] [--out DIR]";
    }

    @Override
    public String summary() {
        return "makes bench cards to print: one page in the order of the work";
    }

    @Override
    public String help() {
        return """

                  DESIGN           a design, ending in .reed
                  --batch STAPLES  measured staples, as for culm batch; its options --caliper, --below, --step and --margin may be given too
                  --each WHAT      with a batch: a card for each staple, for each setting (that is assumed), or one for the class
                  --paper WHICH    a4 (that is assumed) or letter
                  --for, --instrument, --number, --staple, --cane, --shape, --thread, --ends
                                   what stands at the head; without it what the design says, or a line to write on
                  --out DIR        where card.pdf and card.svg go; this folder if it is not given

                Print at 100 %: the card has a ruler to check it.
                Ends with 0: the blank works, 1: it will not work, and the card says so, 2: wrong usage, 3: unreadable input.
                """;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        List<String> valued = new ArrayList<>(List.of("--batch", "--each", "--paper", "--out", "--caliper", "--below", "--step", "--margin"));
        valued.addAll(WHAT);
        Arguments arguments = Arguments.read(words, List.of(), valued);
        Files files = new Files(new Bridge(profiles), terminal);
        DesignedBlank design = files.design(arguments.only("a design's file"));
        Paper paper = Options.paper(arguments);
        List<Card> cards = cards(arguments, files, design);
        TextMeasure measure = ShippedFont.load();
        List<Drawing> pages = cards.stream().map(c -> CardPage.draw(c, paper, measure)).toList();
        String folder = arguments.value("--out").orElse(".");
        files.pdf(folder, "card.pdf", pages);
        for (int i = 0; i < pages.size(); i++) {
            files.write(folder, pages.size() == 1 ? "card.svg" : "card-" + (i + 1) + ".svg", SvgWriter.write(pages.get(i), Palette.PRINT));
        }
        cards.stream().filter(c -> !c.works()).findFirst().ifPresent(c -> terminal.err().println("It will not work like this: " + c.verdict()));
        return cards.stream().allMatch(Card::works) ? ExitCode.FINE : ExitCode.WILL_NOT_WORK;
    }

    private List<Card> cards(Arguments arguments, Files files, DesignedBlank design) throws CommandException, FileProblemException {
        CardHead head = head(arguments, files.head(arguments.only("a design's file")));
        Cards maker = new Cards(design.limits(), rules);
        String each = arguments.value("--each").orElse("setting").toLowerCase(Locale.ROOT);
        if (!List.of("staple", "setting", "class").contains(each)) {
            throw CommandException.usage("--each is staple, setting or class, not " + each);
        }
        if (arguments.value("--batch").isEmpty()) {
            return List.of(maker.of(design.blank(), head));
        }
        BatchCsv.Result read = BatchCommand.read(arguments, arguments.value("--batch").get(), files, design);
        files.told(read.problems());
        BatchPlan plan = BatchCommand.planner(design, read.batch()).plan(design.blank(), read.batch());
        if (plan.served() == 0) {
            throw CommandException.unreadable(arguments.value("--batch").get() + ": no staple of it can be used with this design; culm batch says why");
        }
        return switch (each) {
            case "staple" -> maker.perStaple(design.blank(), plan, head);
            case "class" -> List.of(maker.forClass(design.blank(), plan, head));
            default -> maker.perSetting(design.blank(), plan, head);
        };
    }

    /** What the command line says goes before what the design says. */
    private static CardHead head(Arguments arguments, CardHead design) {
        List<String> known = List.of(design.madeFor(), design.instrument(), design.blankNumber(), design.staple(), design.caneBatch(), design.shape(), design.thread(),
                design.ends());
        List<String> all = new ArrayList<>();
        for (int i = 0; i < WHAT.size(); i++) {
            all.add(arguments.value(WHAT.get(i)).orElse(known.get(i)));
        }
        return new CardHead(design.design(), all.get(0), all.get(1), all.get(2), all.get(3), all.get(4), all.get(5), all.get(6), all.get(7));
    }
}
