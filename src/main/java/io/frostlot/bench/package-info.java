/**
 * Measures how well plans are made: rooms drawn by a seeded generator, methods run on them one
 * after the other, and tables of what they came to. It knows the rooms below, and nothing of
 * terminals or options.
 */
@NullMarked
package io.frostlot.bench;

import org.jspecify.annotations.NullMarked;
