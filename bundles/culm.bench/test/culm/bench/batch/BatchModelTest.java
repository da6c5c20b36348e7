package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.Test;

import culm.model.Batch;
import culm.model.files.ModelFiles;

class BatchModelTest {
    @Test
    void aBatchGoesThroughItsFileUnchanged() throws Exception {
        StapleBatch batch = new StapleBatch("Invented batch", List.of(StapleReadings.of("1", 47.05, 3.38, 2.09),
                new StapleReadings("1a", List.of(46.9, 46.91), List.of(), List.of(2.1), "Bent.", "from the old box")), new Caliper(0.02), 0.4, new SplitBy(0.5, 0.2));
        ModelFiles files = new ModelFiles();
        String text = files.text(BatchModel.write(batch, "box-1"));
        Batch read = files.read(text.getBytes(StandardCharsets.UTF_8), "box.batch", Batch.class).document();
        assertEquals(batch, BatchModel.read(read, 0.5));
        read.setTieStep(null);
        read.setTurnsToSpare(null);
        assertEquals(SplitBy.USUAL, BatchModel.splitBy(read), "as usual where the file does not say");
    }
}
