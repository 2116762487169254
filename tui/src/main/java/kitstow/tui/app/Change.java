package kitstow.tui.app;

import kitstow.tui.edit.Design;

/**
 * Something that was done and can be undone.
 *
 * @param what in a few words
 * @param before how it was
 * @param after how it is since
 */
public record Change(String what, Design before, Design after) {}
