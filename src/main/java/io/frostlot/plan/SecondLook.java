package io.frostlot.plan;

/** Something that is looked for once a plan is known, by planning again. */
public sealed interface SecondLook permits Simplest, BudgetPrice, BoxRoom, Guesses, Comparison {}
