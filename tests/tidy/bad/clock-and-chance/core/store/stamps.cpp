const auto now = std::chrono::system_clock::now();
