package io.frostlot.plan;

/**
 * What a budget costs.
 *
 * @param without what the best plan without it has over the one shown
 */
public record BudgetPrice(Difference without) implements SecondLook {}
