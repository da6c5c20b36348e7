package culm.testkit;

import culm.blank.export.Exporter;
import culm.blank.export.Note;

/** The exporter that ships keeps the contract. */
class ShippedExportersTest extends ExporterContract {
    @Override
    protected Exporter exporter() {
        return new Note();
    }
}
