package culm.geometry.guard;

/** A thread that knows which plug-in it is in. */
final class SupervisedThread extends Thread {
    private volatile Guard inside;

    SupervisedThread(Runnable work, String name) {
        super(work, name);
        setDaemon(true);
    }

    /** Notes the guard that is entered, or left for the one around it; returns the one before. */
    Guard enter(Guard guard) {
        Guard before = inside;
        inside = guard;
        return before;
    }

    Guard inside() {
        return inside;
    }
}
