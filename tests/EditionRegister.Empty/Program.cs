// Nothing: what the runtime itself costs, for the Bench program to measure against.
return 0;
