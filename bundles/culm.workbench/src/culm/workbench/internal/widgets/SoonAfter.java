package culm.workbench.internal.widgets;

import java.util.Optional;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * A place in the window whose content takes long to make: it is made as soon as everything around it was painted once, or when it is asked
 * for. So the window stands sooner. Used on the display's thread only.
 *
 * @param <T> the content
 */
public final class SoonAfter<T extends Control> extends Composite {
    private final Function<Composite, T> maker;
    private final Runnable made;
    private Optional<T> content = Optional.empty();
    private boolean making;

    /**
     * A place, still empty.
     *
     * @param parent where it goes
     * @param maker makes the content in this place
     * @param made run once the content is there
     */
    public SoonAfter(Composite parent, Function<Composite, T> maker, Runnable made) {
        super(parent, SWT.NONE);
        this.maker = maker;
        this.made = made;
        setLayout(new FillLayout());
        addListener(SWT.Paint, new Listener() {
            @Override
            public void handleEvent(Event e) {
                if (isLayoutDeferred()) {
                    redraw(); // the window is still being put together: what is made now would get its place later, unpainted
                    return;
                }
                removeListener(SWT.Paint, this);
                getDisplay().asyncExec(() -> {
                    if (!isDisposed()) {
                        get();
                    }
                });
            }
        });
    }

    /** {@return the content; made now when it was not yet} */
    public T get() {
        if (content.isEmpty()) {
            if (making) {
                throw new IllegalStateException("the content is asked for while it is made");
            }
            making = true;
            T now = maker.apply(this);
            content = Optional.of(now);
            layout();
            made.run();
        }
        return content.get();
    }

    /** {@return the content, if it was made} */
    public Optional<T> ifMade() {
        return content;
    }
}
