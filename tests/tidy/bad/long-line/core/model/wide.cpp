const char* wide = "this line goes on for a good deal longer than anybody with two windows side by side";
