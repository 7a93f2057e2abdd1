package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;

/**
 * What an item provides to others: makes, stores or converts power, heats, cools or airs the room.
 *
 * @param generator {@code null} if it makes no power
 * @param battery {@code null} if it stores none
 * @param converter {@code null} if it converts none and charges nothing
 * @param air {@code null} if it does not treat the air of the room
 */
public record Plant(
        @Nullable Generator generator,
        @Nullable Battery battery,
        @Nullable Converter converter,
        @Nullable AirHandling air) {}
