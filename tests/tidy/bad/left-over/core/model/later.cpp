int half = 0;  // TODO: the other half
