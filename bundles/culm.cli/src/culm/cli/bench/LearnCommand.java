package culm.cli.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import culm.bench.learn.Learned;
import culm.bench.learn.LearnedFit;
import culm.bench.learn.Learner;
import culm.bench.log.LogCsv;
import culm.bench.log.LogDesigns;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.geometry.profile.Profiles;
import culm.model.Design;
import culm.model.FitData;
import culm.model.files.Loaded;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/** {@code culm learn}: what the log teaches the model, and its use in a design. */
public final class LearnCommand implements Command {
    private final Profiles profiles;

    public LearnCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "learn";
    }

    @Override
    public String arguments() {
        return "LOG [--design FILE] [--use DESIGN [--of MAKER]]   or   --drop DESIGN";
    }

    @Override
    public String summary() {
        return "learns one length for each maker, shape and staple batch, and tells changes; puts it into a design or takes it out";
    }

    @Override
    public String help() {
        return """

                  LOG             the reed log: a .log file, or a table (.csv)
                  --design FILE   the design of blanks that name none
                  --use DESIGN    puts what was learned into this design's file as its fit, in use
                  --of MAKER      whose, where the log teaches more than one group
                  --drop DESIGN   takes the fit of a design out of use; it is kept in the file

                At least %d blanks are needed. It is offered only where it is told from none at all (99 %%) and predicts blanks that were held back better.
                Ends with 0: an answer, 1: nothing could be learned, 2: wrong usage, 3: unreadable input.
                """.formatted(Learner.FEWEST);
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of(), List.of("--design", "--use", "--of", "--drop"));
        if (arguments.value("--drop").isPresent()) {
            return drop(arguments.value("--drop").get(), terminal);
        }
        String file = arguments.only("a reed log's file");
        Bridge bridge = new Bridge(profiles);
        Files files = new Files(bridge, terminal);
        LogCsv.Result read = files.log(file);
        files.told(read.problems());
        LogDesigns designs = new LogDesigns(bridge, terminal.file(file), arguments.value("--design").isEmpty() ? Optional.empty()
                : Optional.of(terminal.file(arguments.value("--design").get())));
        List<Learned> learned = new Learner(designs).learn(read.log());
        designs.problems().forEach(terminal.err()::println);
        learned.forEach(l -> terminal.out().print(LearnText.text(l)));
        if (learned.stream().anyMatch(Learned::said)) {
            terminal.out().println(Learned.CANNOT_SEPARATE);
        }
        if (arguments.value("--use").isPresent()) {
            use(choose(learned, arguments.value("--of")), arguments.value("--use").get(), bridge, terminal);
        }
        return learned.stream().anyMatch(Learned::said) ? ExitCode.FINE : ExitCode.WILL_NOT_WORK;
    }

    private static Learned choose(List<Learned> learned, Optional<String> of) throws CommandException {
        List<Learned> said = learned.stream().filter(Learned::said).filter(l -> of.isEmpty() || l.group().maker().equalsIgnoreCase(of.get())).toList();
        if (said.size() != 1) {
            throw CommandException.usage(said.isEmpty() ? "there is nothing learned to use" : said.size() + " groups teach something; say whose with --of");
        }
        if (!said.get(0).worthIt()) {
            throw CommandException.usage("what was learned cannot be told from none at all, or predicts no better; it is not put into use");
        }
        return said.get(0);
    }

    private static void use(Learned learned, String name, Bridge bridge, Terminal terminal) throws CommandException, FileProblemException {
        Path file = terminal.file(name);
        ModelFiles files = new ModelFiles();
        Studio studio = Studio.around(file, files);
        Loaded<Design> loaded = files.load(file, name, Design.class);
        DesignedBlank blank = bridge.read(file);
        Optional<FitData> fit = LearnedFit.data(learned, loaded.document(), blank.blank(), file, studio);
        if (fit.isEmpty()) {
            throw CommandException.unreadable(name + ": with the learned length its sides never close");
        }
        loaded.document().setFit(fit.get());
        save(loaded, files, file, name);
        terminal.err().println(name + " now uses what was learned");
    }

    private static int drop(String name, Terminal terminal) throws CommandException, FileProblemException {
        Path file = terminal.file(name);
        ModelFiles files = new ModelFiles();
        Loaded<Design> loaded = files.load(file, name, Design.class);
        if (loaded.document().getFit() == null || !loaded.document().getFit().isInUse()) {
            throw CommandException.usage(name + " has no fit in use");
        }
        loaded.document().getFit().setInUse(false);
        save(loaded, files, file, name);
        terminal.err().println(name + " no longer uses its fit; it is kept in the file");
        return ExitCode.FINE;
    }

    private static void save(Loaded<Design> loaded, ModelFiles files, Path file, String name) throws FileProblemException {
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        files.save(loaded.document(), file, Optional.of(loaded.stamp()));
    }
}
