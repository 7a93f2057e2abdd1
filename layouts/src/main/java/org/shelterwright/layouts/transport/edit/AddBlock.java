package org.shelterwright.layouts.transport.edit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/**
 * Blocks a piece, in place of what blocked it in the same way before.
 *
 * @param load id of the load
 */
public record AddBlock(String load, Block block) implements JourneyEdit {
    @Override
    public String name() {
        return "Block " + block.what() + " by " + block.way().word();
    }

    @Override
    public Journey apply(Journey journey) {
        Load target = Loads.requireUnder(journey, load, block.what());
        List<Block> blocks = new ArrayList<>(target.blocks());
        blocks.removeIf(one -> one.what().equals(block.what()) && one.way() == block.way());
        blocks.add(block);
        return journey.with(target.withBlocks(blocks));
    }
}
