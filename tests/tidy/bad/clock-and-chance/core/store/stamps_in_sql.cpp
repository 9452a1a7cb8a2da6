const char* sql = "INSERT INTO marks VALUES (datetime('now'))";
