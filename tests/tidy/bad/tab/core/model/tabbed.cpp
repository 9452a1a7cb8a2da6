	int indented = 4;
