package org.holewise.engine.marking;

import java.util.List;

/**
 * Something that can hurt a part or a person. {@code kind} such as {@code over-limit}; {@code ref}
 * empty where no single part is meant; {@code parts} what its sentence names.
 */
public record Caution(String kind, String ref, List<String> parts) {}
