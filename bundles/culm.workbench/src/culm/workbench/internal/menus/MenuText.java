package culm.workbench.internal.menus;

import java.util.List;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.services.IServiceLocator;

/**
 * What stands in each menu: a command in each line, its icon behind it where it has one, other words than the command's own after a
 * colon, a line between groups as a dash.
 */
public enum MenuText {
    /** Files. */
    FILE("""
            culm.studio.newDesign new
            culm.studio.newParts
            culm.studio.open studio
            -
            org.eclipse.ui.file.save save
            org.eclipse.ui.file.saveAll
            org.eclipse.ui.file.close
            -
            culm.design.export export
            culm.sharing.writeAs
            culm.design.print print
            -
            org.eclipse.ui.file.exit : Exit
            """),
    /** Changes. */
    EDIT("""
            org.eclipse.ui.edit.undo undo
            org.eclipse.ui.edit.redo redo
            -
            org.eclipse.ui.edit.cut
            org.eclipse.ui.edit.copy
            org.eclipse.ui.edit.paste
            org.eclipse.ui.edit.selectAll
            -
            culm.design.picture
            culm.design.table
            """),
    /** The design that is open. */
    DESIGN("""
            culm.design.fit fit
            culm.design.fix
            culm.design.limits limits
            -
            culm.design.measured
            culm.design.pin pin
            -
            culm.design.form
            culm.design.marks
            culm.design.finding
            """),
    /** What is used at the bench. */
    BENCH("""
            culm.bench.card print
            culm.bench.template shape
            -
            culm.bench.blank
            culm.bench.wrong
            culm.bench.learn
            -
            culm.bench.newBatch batch
            culm.bench.newLog log
            -
            culm.bench.read
            culm.bench.write
            """),
    /** The folder of designs and parts. */
    STUDIO("""
            culm.studio.find
            -
            culm.studio.copy
            culm.studio.rename
            culm.studio.remove remove
            -
            culm.sharing.replace
            culm.sharing.duplicates
            -
            culm.sharing.compare pair
            culm.sharing.history history
            culm.sharing.name
            -
            culm.studio.refresh
            """),
    /** What is seen, and how. */
    VIEW("""
            culm.design.reed
            culm.design.graphs
            culm.design.changes
            culm.explore.variants
            culm.explore.matters
            culm.explore.tolerances
            culm.explore.choice
            -
            culm.design.larger
            culm.design.smaller
            culm.design.whole
            -
            culm.window.light
            culm.window.dark
            -
            culm.window.mm
            culm.window.thou
            -
            org.eclipse.ui.window.resetPerspective : Reset Layout
            org.eclipse.ui.window.showKeyAssist : All Keys
            """),
    /** About the program. */
    HELP("""
            culm.sharing.plugIns
            -
            org.eclipse.ui.help.aboutAction : About Culm
            """),
    /** What can be done with a file, in the tree of the studio. */
    TREE("""
            culm.studio.newDesign new
            culm.studio.newParts
            culm.bench.newBatch batch
            culm.bench.newLog log
            -
            culm.studio.copy
            culm.studio.rename
            culm.studio.remove remove
            -
            culm.sharing.replace
            culm.sharing.compare pair
            -
            culm.studio.refresh
            """);

    private final List<MenuLine> lines;

    MenuText(String lines) {
        this.lines = lines.lines().map(MenuLine::of).toList();
    }

    /**
     * Makes its lines.
     *
     * @param site where its commands are run
     * @return the lines, for one menu
     */
    public List<IContributionItem> items(IServiceLocator site) {
        return lines.stream().map(line -> line.item(site)).toList();
    }

    /** {@return the commands it offers} */
    public List<String> commands() {
        return lines.stream().flatMap(line -> line.command().stream()).toList();
    }
}
