"""What is known of the runs? Each run with its account, the forecast of the next cut, wishes for a fruit, feints that
wait, yields by material, and a still's card."""
