package culm.workbench.internal.widgets;

import java.util.function.IntFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

import culm.workbench.internal.look.Icons;
import culm.workbench.internal.look.Look;

/**
 * The icons before the rows of a table, painted by this program: the toolkit would take those of 100 % and blow them up. It only keeps their
 * room, by an icon that shows nothing.
 */
public final class RowIcons {
    private final Table table;
    private final Look look;
    private final Image room;
    private final IntFunction<Image> icons;

    private RowIcons(Table table, Look look, Image room, IntFunction<Image> icons) {
        this.table = table;
        this.look = look;
        this.room = room;
        this.icons = icons;
    }

    /**
     * Paints the icons of a table from now on.
     *
     * @param table the table
     * @param look the colours
     * @param icons the program's icons
     * @param ofRow the icon of a row, from 0
     * @return what keeps their room in the rows
     */
    public static RowIcons in(Table table, Look look, Icons icons, IntFunction<Image> ofRow) {
        RowIcons rows = new RowIcons(table, look, icons.get("nothing"), ofRow);
        table.addListener(SWT.PaintItem, rows::paint);
        return rows;
    }

    /**
     * Keeps the room for a row's icon.
     *
     * @param item the row
     */
    public void keepRoom(TableItem item) {
        item.setImage(room);
    }

    private void paint(Event e) {
        TableItem item = (TableItem) e.item;
        int row = table.indexOf(item);
        if (row < 0 || item.getImage() == null) {
            return; // not filled yet
        }
        Image icon = icons.apply(row);
        Rectangle place = item.getImageBounds(0);
        Rectangle size = icon.getBounds();
        Rectangle at = new Rectangle(place.x + (place.width - size.width) / 2, place.y + (place.height - size.height) / 2, size.width, size.height);
        if (table.isSelected(row)) {
            IconGround.paint(e.gc, look, at);
        }
        e.gc.drawImage(icon, at.x, at.y);
    }
}
