long today() { return time(nullptr); }
